package org.drillwright.print.svg;

/** Words as they may stand in the text or in a quoted attribute of XML or HTML, whoever wrote them. */
public final class Escaped {

    private Escaped() {}

    public static String of(String words) {
        StringBuilder text = new StringBuilder(words.length() + 16);
        words.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> text.append("&amp;");
                case '<' -> text.append("&lt;");
                case '>' -> text.append("&gt;");
                case '"' -> text.append("&quot;");
                case '\'' -> text.append("&#39;");
                default -> text.appendCodePoint(isAllowed(point) ? point : 0xFFFD);
            }
        });
        return text.toString();
    }

    /** What may stand in a document at all (XML 1.0, production 2). */
    private static boolean isAllowed(int point) {
        return point == '\t'
                || point == '\n'
                || point == '\r'
                || (point >= 0x20 && point <= 0xD7FF)
                || (point >= 0xE000 && point <= 0xFFFD)
                || point >= 0x10000;
    }
}
