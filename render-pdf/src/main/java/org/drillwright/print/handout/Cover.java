package org.drillwright.print.handout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.model.School;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Block;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Table;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Typefaces;

/**
 * The cover of a packet: whose it is, what it holds and where.
 *
 * @param title of the set
 * @param how to print it: a label for a packet that is cut
 * @param picture of a count of one of its drills, if one can be drawn
 */
public record Cover(
        School school, String title, CardSize size, Label how, Optional<Picture> picture, List<Listed> drills) {

    private static final double PICTURE = Millimetres.toPoints(44);

    public Cover {
        drills = List.copyOf(drills);
    }

    /** One page, or as many as the contents take. */
    public List<Frame> pages(Sheet sheet, Labels labels, Typefaces faces) {
        Type type = Type.reading(faces);
        String document = school.name().isEmpty() ? title : school.name() + " · " + title;
        Flow flow = new Flow(sheet, 1, Foot.of(type, sheet, labels, document));
        flow.add(head(type, sheet.inner(), labels));
        Table table = Table.shared(type, sheet.inner(), 1, 1.1, 8, 2.2, 1.5, 1.3, 2.6);
        flow.table(
                table.head(List.of(
                        labels.text(Label.NUMBER),
                        labels.text(Label.DRILL),
                        labels.text(Label.WEAPON),
                        labels.text(Label.CARDS),
                        labels.text(Label.PAGE),
                        labels.text(Label.MARK_HEAD))),
                rows(table, labels));
        return flow.pages();
    }

    private List<Block> rows(Table table, Labels labels) {
        List<Block> rows = new ArrayList<>();
        for (Listed listed : drills) {
            rows.add(table.row(List.of(
                    String.valueOf(rows.size() + 1),
                    listed.title(),
                    labels.weapon(listed.drill().weapon()),
                    String.valueOf(listed.cards()),
                    String.valueOf(listed.page()),
                    listed.mark().shown())));
        }
        return rows;
    }

    private Block head(Type type, double width, Labels labels) {
        double words = picture.isPresent() ? width - PICTURE - 2 * type.size() : width;
        int cards = drills.stream().mapToInt(Listed::cards).sum();
        List<Block> blocks = new ArrayList<>();
        blocks.add(type.times(1.3).paragraph(Face.REGULAR, school.name(), words));
        blocks.add(type.times(3).title(headline(labels), words));
        blocks.add(type.times(1.1)
                .paragraph(Face.BOLD, labels.text(Label.PACKET_SIZE, drills.size(), cards, size.word()), words));
        revised(labels).ifPresent(date -> blocks.add(type.paragraph(Face.REGULAR, date, words)));
        blocks.add(type.paragraph(Face.REGULAR, labels.text(how), words));
        Block all = Block.stack(blocks);
        Block beside = picture.map(one ->
                        new Block(one.height(PICTURE), List.of(), List.of(one.draw(width - PICTURE, 0, PICTURE))))
                .orElse(Block.NONE);
        return all.beside(beside).padded(1.2 * type.size());
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
