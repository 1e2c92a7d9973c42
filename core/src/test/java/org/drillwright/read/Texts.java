package org.drillwright.read;

import java.text.Normalizer;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/** Texts such as nobody would wish to find in a file. */
final class Texts {

    private static final String[] PIECES = {
        "a",
        "Parry",
        "quarte",
        "no",
        "1:30",
        "007",
        "~",
        "null",
        " ",
        "  ",
        ":",
        ": ",
        " #",
        "#",
        "\"",
        "'",
        "''",
        "\\",
        "\\n",
        "[",
        "]",
        "{",
        "}",
        "&",
        "*",
        "!",
        "|",
        ">",
        "%",
        "@",
        "`",
        "-",
        "- ",
        "?",
        "? ",
        ",",
        ", ",
        "=",
        "<<",
        "---",
        "...",
        "\n",
        "\n\n",
        "\t",
        "\u00a0",
        "\u00e9",
        "e\u0301",
        "\u0645",
        "\u5263",
        "\u3001",
        "\ud83e\udd3a",
        "\u200d",
        "\u201c",
        "\u201d",
        "\u2026",
        "\u1100\u1161",
        "\u0928\u093c",
        "\u212b",
        "\ufb01",
        "\u0344",
        "\u0300",
        "\u0316"
    };

    private Texts() {}

    /** A text as a drill may hold it: in normal form, its ends trimmed; empty if it may be absent. */
    static Arbitrary<String> text(int pieces) {
        return raw(pieces)
                .map(text -> Normalizer.normalize(text, Normalizer.Form.NFC).strip());
    }

    /** A text that is there. */
    static Arbitrary<String> present(int pieces) {
        return text(pieces).map(text -> text.isEmpty() ? "x" : text);
    }

    /** Pieces put together as they come. */
    static Arbitrary<String> raw(int pieces) {
        return Arbitraries.of(PIECES).list().ofMaxSize(pieces).map(list -> String.join("", list));
    }
}
