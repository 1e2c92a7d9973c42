package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;
import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Legibility;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;

/**
 * What all sheets of an evening have in common.
 *
 * @param wording the words of the sheets in the school's language
 * @param day such as {@code Wednesday 2026-12-02}
 * @param foot at the end of each page
 * @param title what a drill is called, by its id
 * @param repetitions of a drill with each partner in each role, by its id
 */
record Notice(
        WallTexts wording,
        String day,
        String foot,
        UnaryOperator<String> title,
        ToIntFunction<String> repetitions,
        SheetSize size,
        Typefaces faces) {

    /** Below this, in metres, people crowd before the sheet. */
    private static final double CLOSE = 1.5;

    /** Over the foot, in points. */
    private static final double CLEAR = 4;

    private static final double TITLE = 24;
    private static final double WORDS = 11;
    private static final double FOOT = 8.5;

    Sheet sheet() {
        return Sheet.upright(size, Sheet.NARROW);
    }

    /** How much larger the paper is than A4, seen from farther. */
    double scale() {
        return Sheet.enlarged(size);
    }

    Type type(double points) {
        return new Type(faces, points);
    }

    Type words() {
        return type(WORDS * scale());
    }

    /** The heading and what stands below it. */
    Box head(String heading, List<List<Styled>> paragraphs) {
        double width = sheet().inner();
        List<Box> blocks = new ArrayList<>();
        blocks.add(type(TITLE * scale()).title(heading, width));
        paragraphs.stream()
                .filter(words -> !words.isEmpty())
                .forEach(words -> blocks.add(words().paragraph(words, width)));
        return Box.stack(blocks);
    }

    static Styled bold(String words) {
        return new Styled(words, Face.BOLD);
    }

    static Styled plain(String words) {
        return new Styled(words, Face.REGULAR);
    }

    /** From how far type is read, in metres; where that is near, what helps; and the page. */
    String end(Type read, int page) {
        double metres = Math.floor(Legibility.readFrom(read.capHeight()) / 100) / 10;
        return end(metres < CLOSE ? WallText.READ_FROM_CLOSE : WallText.READ_FROM, metres, page);
    }

    private String end(WallText read, double metres, int page) {
        return wording.text(read, String.format(wording.locale(), "%.1f", metres)) + " \u00B7 "
                + wording.text(WallText.PAGE, page);
    }

    private Box foot(String end) {
        Type small = type(FOOT * scale());
        return Box.of(Role.PARAGRAPH, small.set(Face.REGULAR, Foot.line(foot, end), 0, 0, sheet().inner()));
    }

    /** How much of a page may be filled, whatever its foot says of the distance. */
    double room() {
        return room(end(WallText.READ_FROM_CLOSE, 99.9, 99));
    }

    /** How much of a page may be filled over a foot with such an end. */
    double room(String end) {
        return sheet().room(foot(end)) - CLEAR;
    }

    /** A page with its foot, which ends so. */
    Frame page(Box body, String end) {
        return sheet().page(body, foot(end));
    }
}
