package org.drillwright.formatter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Writes drills as nobody should: keys in any order, any quotes, any indents, remarks anywhere. */
final class Untidy {

    private static final List<String> WORDS = List.of(
            "parry",
            "quarte",
            "no",
            "1:30",
            "007",
            "~",
            "null",
            "it's",
            "a:b",
            "a: b",
            "x #y",
            "#z",
            "- w",
            "\"q\"",
            "back\\slash",
            "\u00e9",
            "e\u0301",
            "\u5263",
            "\ud83e\udd3a",
            "[a]",
            "{b}",
            "a,b",
            "&c",
            "*d",
            "!e",
            "%f",
            "@g",
            "`h",
            "?",
            "? i",
            "=",
            "<<",
            "---",
            "...",
            "\u00a0",
            "\u2003",
            "  two",
            "yes",
            "2026-09-01",
            "1.5",
            "|",
            ">",
            "'",
            "''",
            "a\tb");

    private final Random random;
    private final StringBuilder text = new StringBuilder();
    private final List<String> remarks = new ArrayList<>();

    /** Where the lines of the text written last begin, if it stands below its key: a remark must keep out of it. */
    private int block = Integer.MAX_VALUE;

    /** The count that a remark belongs to, as its last word ({@code @2}), so that it can be seen where it went. */
    private String of = "";

    Untidy(long seed) {
        this.random = new Random(seed);
    }

    List<String> remarks() {
        return remarks;
    }

    String write() {
        if (one(3)) {
            remark(random.nextInt(3));
            text.append(one(2) ? "\n" : "");
        }
        text.append(one(6) ? "---\n" : "");
        List<Runnable> keys = new ArrayList<>(List.of(
                () -> key("", "title", text(6)),
                () -> key("", "level", "beginner"),
                () -> key("", "form", "solo"),
                () -> key("", "weapon", "none"),
                this::steps));
        for (String key : List.of("purpose", "start", "opening", "closing", "note", "variant-of")) {
            keys.add(() -> key("", key, text(one(4) ? 40 : 6)));
        }
        for (String key : List.of("needs", "gear", "tags", "cautions")) {
            keys.add(() -> list(key));
        }
        keys.add(() -> key("", "repeat", "6"));
        keys.add(() -> key("", "swap", "true"));
        keys.add(() -> key("", "revised", "2026-09-01"));
        keys.add(this::accept);
        List<Runnable> chosen = new ArrayList<>(keys.subList(0, 5));
        keys.subList(5, keys.size()).stream().filter(key -> one(2)).forEach(chosen::add);
        Collections.shuffle(chosen, random);
        chosen.forEach(key -> {
            between();
            key.run();
        });
        between();
        return one(5) ? text.toString().replace("\n", "\r\n") : text.toString();
    }

    private boolean one(int in) {
        return random.nextInt(in) == 0;
    }

    private void between() {
        while (one(4)) {
            if (one(3)) {
                text.append(one(2) ? "\n" : "   \n");
            } else {
                remark(random.nextInt(7));
            }
        }
    }

    private void remark(int indent) {
        text.append(" ".repeat(Math.min(indent, block - 1))).append(remark()).append(one(3) ? "  \n" : "\n");
    }

    private String remark() {
        String remark = "# r" + remarks.size() + (one(3) ? ": 'x' [y" : "") + " /" + remarks.size() + of;
        remarks.add(remark);
        return remark;
    }

    private String beside() {
        return one(5) ? " ".repeat(1 + random.nextInt(3)) + remark() : "";
    }

    private String text(int words) {
        StringBuilder made = new StringBuilder();
        for (int word = 1 + random.nextInt(words); word > 0; word--) {
            made.append(one(2) ? "word" : WORDS.get(random.nextInt(WORDS.size())))
                    .append(one(9) ? "  " : " ");
        }
        String text = made.toString().strip();
        return text.isEmpty() ? "x" : text;
    }

    private void key(String indent, String key, String value) {
        text.append(indent).append(one(5) ? "'" + key + "'" : key).append(':');
        scalar(indent + "  ", value);
    }

    /** A text in some style that can hold it, with its line end. */
    private void scalar(String indent, String value) {
        String inner = indent + " ".repeat(random.nextInt(3));
        boolean plain = Scalars.of(value, false, false).equals(value);
        int style = random.nextInt(5);
        block = style == 1 || style == 2 ? inner.length() : Integer.MAX_VALUE;
        switch (style) {
            case 0 ->
                text.append(one(4) ? "\n" + inner : " ")
                        .append('\'')
                        .append(value.replace("'", "''").replace("\t", " "))
                        .append('\'')
                        .append(beside())
                        .append('\n');
            case 1 ->
                text.append(" >")
                        .append(one(2) ? "-" : "")
                        .append(beside())
                        .append('\n')
                        .append(inner)
                        .append(value.replace("\t", " "))
                        .append('\n')
                        .append(one(3) ? "\n" : "");
            case 2 ->
                text.append(" |")
                        .append(beside())
                        .append('\n')
                        .append(inner)
                        .append(value.replace("\t", " "))
                        .append('\n')
                        .append(inner)
                        .append(one(2) ? "and so on\n" : "  indented\n");
            case 3 ->
                text.append(
                                plain && !value.contains("  ")
                                        ? " " + value.replace(" word", "\n" + inner + "word")
                                        : " " + Scalars.quoted(value))
                        .append('\n');
            default ->
                text.append(' ').append(Scalars.quoted(value)).append(beside()).append('\n');
        }
    }

    private void list(String key) {
        block = Integer.MAX_VALUE;
        text.append(key).append(':').append(one(2) ? beside() : "");
        int items = random.nextInt(4);
        if (items == 0) {
            text.append(text.charAt(text.length() - 1) == ':' ? " []" : "\n  []")
                    .append('\n');
        } else if (one(2)) {
            bracketed(items);
        } else {
            text.append('\n');
            String indent = " ".repeat(random.nextInt(4));
            for (; items > 0; items--) {
                between(indent);
                text.append(indent).append('-');
                scalar(indent + "  ", text(3));
            }
        }
    }

    private void between(String indent) {
        if (one(4)) {
            remark(indent.length() + random.nextInt(3));
        }
    }

    private void bracketed(int items) {
        text.append("\n   [");
        for (int item = 0; item < items; item++) {
            text.append(one(3) ? " " + remark() + "\n    " : "").append(Scalars.quoted(text(3)));
            text.append(item < items - 1 ? "," : "").append(one(3) ? " " + remark() + "\n    " : " ");
        }
        text.append(']').append(beside()).append('\n');
    }

    private void accept() {
        block = Integer.MAX_VALUE;
        text.append("accept:").append(beside()).append('\n');
        key("   ", "not-back-at-start", text(4));
        between("   ");
        key("   ", "words-unread", text(4));
        between("   ");
    }

    private void steps() {
        block = Integer.MAX_VALUE;
        text.append("steps:").append(beside()).append('\n');
        int counts = 1 + random.nextInt(3);
        if (one(4)) {
            bracketedSteps(counts);
        } else {
            dashedSteps(" ".repeat(random.nextInt(4)), counts);
        }
        of = "";
    }

    private void bracketedSteps(int counts) {
        text.append("  [");
        for (int count = 1; count <= counts; count++) {
            of = " @" + count;
            text.append(one(3) ? "\n      " + remark() + "\n" : "").append("  {");
            key("", "leader", count);
            text.append(one(2) ? ", " : one(2) ? ", " + remark() + "\n    " : ",\n   " + remark() + "\n    ");
            key("", "follower", count);
            text.append(one(3) ? " " + remark() + "\n    }" : "}").append(count < counts ? "," : "");
            text.append(one(3) ? " " + remark() + "\n" : "\n");
        }
        text.append("  ]\n");
    }

    private void key(String lead, String key, int count) {
        text.append(lead).append(key).append(": 'word ").append(count).append('\'');
    }

    /** A remark as far in as the keys of the count before it is that count's; any other is of the count that comes. */
    private void dashedSteps(String indent, int counts) {
        for (int count = 0; count < counts; count++) {
            int column = Math.min(indent.length() + random.nextInt(3), block - 1);
            of = " @" + (count > 0 && column >= indent.length() + 2 ? count : count + 1);
            if (one(4)) {
                remark(column);
            }
            of = " @" + (count + 1);
            if (one(5)) {
                text.append(indent).append("- {");
                key("", "follower", count);
                text.append(one(2) ? ", " : ", " + remark() + "\n" + indent + "   ");
                key("", "leader", count);
                text.append("}").append(beside()).append('\n');
                block = Integer.MAX_VALUE;
                continue;
            }
            text.append(indent).append("-").append(one(6) ? " " + remark() + "\n" + indent + "  " : " ");
            String inner = indent + "  ";
            List<String> keys = new ArrayList<>(List.of("leader", "follower", "distance", "safety", "call"));
            Collections.shuffle(keys, random);
            boolean first = true;
            for (String key : keys.subList(0, 1 + random.nextInt(4))) {
                if (!first) {
                    between(inner);
                }
                turn(first ? "" : inner, inner, key);
                first = false;
            }
            between(inner);
        }
    }

    private void turn(String lead, String inner, String key) {
        if (key.length() > 5 && key.endsWith("er") && one(4)) {
            text.append(lead)
                    .append(key)
                    .append(": {say: ")
                    .append(Scalars.quoted(text(3)))
                    .append(one(3) ? ", " + remark() + "\n" + inner + "  " : ", ")
                    .append("means: hold}")
                    .append(beside())
                    .append('\n');
        } else {
            text.append(lead).append(key).append(':');
            scalar(inner + "  ", text(4));
        }
    }
}
