package org.drillwright.print.phone;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.Deflater;

/** A TrueType file as browsers take it over wires: each table packed. WOFF File Format 1.0, W3C 2012, sections 3 to 5. */
final class Woff {

    private static final int HEADER = 44;
    private static final int ENTRY = 20;
    private static final int SFNT_HEADER = 12;
    private static final int SFNT_ENTRY = 16;
    private static final int SIGNATURE = 0x774F4646;

    private Woff() {}

    /** @param data as the file holds it: packed, unless that makes it no shorter */
    private record Table(int tag, int checksum, int length, ByteBuffer data) {

        int padded() {
            return fours(data.remaining());
        }
    }

    static byte[] of(byte[] trueType) {
        ByteBuffer font = ByteBuffer.wrap(trueType);
        int flavour = font.getInt();
        int count = font.getShort();
        List<Table> tables = new ArrayList<>();
        for (int at = 0; at < count; at++) {
            font.position(SFNT_HEADER + at * SFNT_ENTRY);
            int tag = font.getInt();
            int checksum = font.getInt();
            int offset = font.getInt();
            byte[] data = new byte[font.getInt()];
            font.get(offset, data);
            tables.add(new Table(tag, checksum, data.length, ByteBuffer.wrap(packed(data))));
        }
        return written(flavour, tables);
    }

    private static byte[] written(int flavour, List<Table> tables) {
        int directory = HEADER + ENTRY * tables.size();
        int total = directory + tables.stream().mapToInt(Table::padded).sum();
        int unpacked = SFNT_HEADER
                + SFNT_ENTRY * tables.size()
                + tables.stream().mapToInt(table -> fours(table.length())).sum();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(total);
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(SIGNATURE);
            out.writeInt(flavour);
            out.writeInt(total);
            out.writeShort(tables.size());
            out.writeShort(0);
            out.writeInt(unpacked);
            // Version 1.0 of the file; neither metadata nor private data, of five numbers.
            out.writeShort(1);
            out.writeShort(0);
            out.write(new byte[HEADER - 24]);
            int offset = directory;
            for (Table table : tables) {
                out.writeInt(table.tag());
                out.writeInt(offset);
                out.writeInt(table.data().remaining());
                out.writeInt(table.length());
                out.writeInt(table.checksum());
                offset += table.padded();
            }
            for (Table table : tables) {
                out.write(table.data().array());
                out.write(new byte[table.padded() - table.data().remaining()]);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    private static byte[] packed(byte[] data) {
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
        deflater.setInput(data);
        deflater.finish();
        byte[] room = new byte[data.length];
        int length = deflater.deflate(room);
        boolean shorter = deflater.finished() && length < data.length;
        deflater.end();
        return shorter ? Arrays.copyOf(room, length) : data;
    }

    private static int fours(int length) {
        return (length + 3) / 4 * 4;
    }
}
