package org.drillwright.print.page;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.SetText;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;

/** At the foot of a page: that rules and an instructor come first, what the page is part of, and its number. */
public final class Foot {

    private Foot() {}

    public static IntFunction<Block> of(Type type, Sheet sheet, Labels labels, String document) {
        return of(type.times(0.8), sheet, labels.text(Label.DEFERRAL_PAGE), document);
    }

    /**
     * In type of a size of its own.
     *
     * @param first what comes before the page; may be empty
     */
    public static IntFunction<Block> of(Type small, Sheet sheet, String first, String document) {
        double width = sheet.inner();
        Block deferral = small.paragraph(Face.REGULAR, first, width);
        return page -> {
            String number = String.valueOf(page);
            double room = small.width(Face.BOLD, number) + small.size();
            SetText named = small.set(Face.REGULAR, document, 0, 0, width - room);
            SetText numbered = small.set(Face.BOLD, number, width - room + small.size(), 0, room);
            Mark rule = new Mark.Line(0, 0, width, 0, 0.5, Ink.BLACK);
            Block line = new Block(
                    Math.max(named.height(), numbered.height()),
                    List.of(),
                    List.of(paragraph(named), paragraph(numbered)));
            return Block.stack(List.of(
                    Block.space(small.size()),
                    new Block(0.5 * small.size(), List.of(rule), List.of()),
                    deferral,
                    line));
        };
    }

    /** What a page is part of; parts that are blank are left out. */
    public static String words(String... parts) {
        return Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining(" \u00B7 "));
    }

    private static Node paragraph(SetText set) {
        return new Node.Words(Role.PARAGRAPH, set.lines());
    }
}
