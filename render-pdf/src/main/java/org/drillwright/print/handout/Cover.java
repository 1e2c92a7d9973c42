package org.drillwright.print.handout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.model.School;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.words.CardNumbers;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Table;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Typefaces;

/**
 * The cover of a packet: whose it is, what it holds, how its cards are read.
 *
 * @param title of the set
 * @param how to print it: a label for a packet that is cut
 */
public record Cover(School school, String title, CardSize size, Label how, List<Listed> drills) {

    private static final double TYPE = 11;

    private static final double TITLE = 32;

    public Cover {
        drills = List.copyOf(drills);
    }

    /** One page, or as many as the contents take. */
    public List<Frame> pages(Sheet sheet, Labels labels, Typefaces faces) {
        Type type = new Type(faces, TYPE);
        String first = labels.text(Label.DEFERRAL_PAGE);
        Flow flow = new Flow(sheet, 1, Foot.of(type.times(0.8), sheet, first, document()));
        flow.add(head(type, sheet.inner(), labels));
        List<String> heads = List.of(
                labels.text(Label.CARD),
                labels.text(Label.DRILL),
                labels.text(Label.WEAPON),
                labels.text(Label.NEEDS_CARDS),
                labels.text(Label.MARK_HEAD));
        List<List<String>> rows = rows(labels);
        Table table =
                Table.shared(type, sheet.inner(), 1, 1.1, 7.5, 1.8, 3, 2.8).holding(heads, rows);
        flow.table(table.head(heads), rows.stream().map(table::row).toList());
        flow.add(Box.space(TYPE));
        new CardKey(type, sheet.inner(), labels).addSigns(flow);
        flow.add(type.paragraph(Face.REGULAR, labels.text(how), sheet.inner()));
        return Mirrored.pages(flow.pages(), labels.language().locale(), faces);
    }

    /** What its pages are part of. */
    String document() {
        return Foot.line(school.name(), title);
    }

    private List<List<String>> rows(Labels labels) {
        List<List<String>> rows = new ArrayList<>();
        for (Listed listed : drills) {
            rows.add(List.of(
                    String.valueOf(rows.size() + 1),
                    listed.title(),
                    labels.weapon(listed.drill().weapon()),
                    CardNumbers.of(listed.needs(), title),
                    listed.mark().shown()));
        }
        return rows;
    }

    private Box head(Type type, double width, Labels labels) {
        int cards = drills.stream().mapToInt(Listed::cards).sum();
        List<Box> blocks = new ArrayList<>();
        blocks.add(type.paragraph(Face.REGULAR, school.name(), width));
        blocks.add(new Type(type.faces(), TITLE).title(headline(labels), width));
        blocks.add(
                type.paragraph(Face.REGULAR, labels.text(Label.PACKET_SIZE, drills.size(), cards, size.word()), width));
        revised(labels).ifPresent(date -> blocks.add(type.paragraph(Face.REGULAR, date, width)));
        blocks.add(Box.space(0.4 * TYPE));
        blocks.add(type.paragraph(Face.REGULAR, labels.text(Label.PACKET_GIVEN), width));
        return Box.stack(blocks).padded(TYPE);
    }

    /** A title begins with a capital. */
    private String headline(Labels labels) {
        int first = title.offsetByCodePoints(0, 1);
        return title.substring(0, first).toUpperCase(labels.language().locale()) + title.substring(first);
    }

    /** The day of the latest revision that a drill states. */
    private Optional<String> revised(Labels labels) {
        return drills.stream()
                .flatMap(listed -> listed.drill().revised().stream())
                .max(Comparator.naturalOrder())
                .map(date -> labels.text(Label.REVISED, date));
    }
}
