package org.drillwright.print.command.console;

import java.io.OutputStream;
import java.nio.charset.Charset;
import java.util.Optional;
import java.util.regex.Pattern;
import org.drillwright.source.DirectionMarks;

/**
 * What people see. No control character gets through that a file, a name or an argument may have brought along: a
 * terminal would obey it. Only line ends, tabs and, where colours are wished, the colours themselves pass.
 */
final class ShownStream extends WordStream {

    private static final String STAND_IN = "\uFFFD";

    private static final String CONTROL = "[\\p{Cc}&&[^\\n\\r\\t]]";

    /** Weights and colours of letters (ECMA-48, 8.3.117): nothing that hides a text. */
    private static final String COLOUR = "\\x1B\\[(?:[0-3]|2[1-4]|3[1-9]|;)*m";

    private final Pattern obeyed;
    private final boolean people;
    private final Optional<Margin> margin;

    /**
     * @param people whether people read it, not programs, which are to have names as they are
     * @param margin at which long lines are broken, if any
     */
    ShownStream(OutputStream out, Charset charset, boolean colour, boolean people, Optional<Margin> margin) {
        super(out, charset);
        this.obeyed = Pattern.compile(colour ? "(?!" + COLOUR + ")" + CONTROL : CONTROL);
        this.people = people;
        this.margin = margin;
    }

    private String shown(String text) {
        String allowed = upright(obeyed.matcher(text).replaceAll(STAND_IN));
        return margin.map(edge -> edge.within(allowed)).orElse(allowed);
    }

    /** Marks that turn the direction of a text could show people another one. */
    private String upright(String text) {
        return people && text.codePoints().anyMatch(point -> DirectionMarks.turns(point, () -> text))
                ? text.codePoints()
                        .map(point -> DirectionMarks.turns(point, () -> text) ? STAND_IN.codePointAt(0) : point)
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString()
                : text;
    }

    @Override
    public void print(String text) {
        super.print(shown(String.valueOf(text)));
    }
}
