package org.drillwright.print.pdf;

import java.util.Arrays;

/**
 * A page's content as the operators of PDF (ISO 32000-1, annex A), gathered as bytes. Written by hand because a card has
 * hundreds of short runs, and the library's own stream looks up each glyph and formats each number anew.
 */
final class Operators {

    /** Numbers are written to a ten-thousandth of a point: finer than any printer. */
    private static final int FRACTION = 10_000;

    private static final int DIGITS = 4;

    private byte[] bytes = new byte[1 << 13];
    private int length;

    byte[] toBytes() {
        return Arrays.copyOf(bytes, length);
    }

    /** An operator behind its operands. */
    Operators op(String name) {
        return word(name).put('\n');
    }

    /** A word and the space behind it. */
    Operators word(String ascii) {
        for (int at = 0; at < ascii.length(); at++) {
            put(ascii.charAt(at));
        }
        return put(' ');
    }

    Operators numbers(double... values) {
        for (double value : values) {
            number(value);
        }
        return this;
    }

    Operators number(double value) {
        long scaled = Math.round(value * FRACTION);
        if (scaled < 0) {
            put('-');
            scaled = -scaled;
        }
        digits(scaled / FRACTION);
        fraction((int) (scaled % FRACTION));
        return put(' ');
    }

    private void digits(long whole) {
        if (whole >= 10) {
            digits(whole / 10);
        }
        put('0' + (int) (whole % 10));
    }

    private void fraction(int part) {
        int unit = FRACTION / 10;
        if (part > 0) {
            put('.');
        }
        for (int digit = 0; digit < DIGITS && part > 0; digit++) {
            put('0' + part / unit);
            part = part % unit * 10;
        }
    }

    /** A glyph's number as four hexadecimal digits. */
    Operators hex(int glyph) {
        for (int shift = 12; shift >= 0; shift -= 4) {
            put(Character.forDigit((glyph >> shift) & 0xF, 16));
        }
        return this;
    }

    Operators put(int ascii) {
        if (length == bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * length);
        }
        bytes[length++] = (byte) ascii;
        return this;
    }
}
