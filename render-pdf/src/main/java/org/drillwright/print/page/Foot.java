package org.drillwright.print.page;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Role;

/** At the foot of a page: that rules and an instructor come first, what the page is part of, and its number. */
public final class Foot {

    private Foot() {}

    /**
     * For the page of a number.
     *
     * @param first what comes before the page; may be empty
     */
    public static IntFunction<Box> of(Type small, Sheet sheet, String first, String document) {
        double width = sheet.inner();
        Box deferral = small.paragraph(Face.REGULAR, first, width);
        return page -> {
            String number = String.valueOf(page);
            double room = small.width(Face.BOLD, number) + small.size();
            SetText named = small.set(Face.REGULAR, document, 0, 0, width - room);
            SetText numbered = small.set(Face.BOLD, number, width - room + small.size(), 0, room);
            return Box.stack(
                    Box.space(small.size()),
                    Box.space(0.5 * small.size()).on(LineWeight.THIN.across(0, width, 0)),
                    deferral,
                    Box.abreast(List.of(Box.of(Role.PARAGRAPH, named), Box.of(Role.PARAGRAPH, numbered))));
        };
    }

    /** Parts one behind the other; those that are blank are left out. */
    public static String line(String... parts) {
        return Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining(" \u00B7 "));
    }
}
