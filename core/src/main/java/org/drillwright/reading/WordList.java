package org.drillwright.reading;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.LexiconFile;
import org.drillwright.wording.PackedFile;

/**
 * A language's words: the text that people write, and, where the build has put it beside the text, the list with all forms made of
 * it, as to make them takes longer than to read a drill. The list tells of which text it was made, and only that one counts.
 */
final class WordList {

    /** Where the build puts it, in the language's folder. */
    static final String PACKED = "words.packed";

    /** How it is packed; another number when that changes. */
    private static final int FORMAT = 1;

    /** The parts of a language's word list. */
    private static final List<String> PARTS =
            List.of("spelling", "lines", "actions", "things", "people", "small", "manner", "short");

    private final String tag;
    private final List<byte[]> parts = new ArrayList<>();

    private WordList(String tag) {
        this.tag = tag;
        for (String part : PARTS) {
            parts.add(PackedFile.bytes(WordList.class, tag + "/" + part + ".lexicon"));
        }
    }

    /** @param tag of the language (BCP 47) */
    static WordList of(String tag) {
        return new WordList(tag);
    }

    Lexicon lexicon() {
        return PackedFile.ifThere(WordList.class, tag + "/" + PACKED)
                .flatMap(this::unpacked)
                .orElseGet(() -> LexiconFile.read(lines()));
    }

    /** As the build packs it. */
    byte[] packed() {
        byte[] list = LexiconFile.packed(lines());
        return ByteBuffer.allocate(Long.BYTES + list.length)
                .putLong(mark())
                .put(list)
                .array();
    }

    /** Of what was packed; empty if it was made of another text. */
    Optional<Lexicon> unpacked(byte[] packed) {
        ByteBuffer bytes = ByteBuffer.wrap(packed);
        return bytes.getLong() == mark() ? Optional.of(LexiconFile.unpacked(bytes, this::lines)) : Optional.empty();
    }

    private long mark() {
        CRC32 sum = new CRC32();
        parts.forEach(sum::update);
        return (long) FORMAT << Integer.SIZE | sum.getValue();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (byte[] part : parts) {
            lines.addAll(new String(part, StandardCharsets.UTF_8).lines().toList());
        }
        return lines;
    }
}
