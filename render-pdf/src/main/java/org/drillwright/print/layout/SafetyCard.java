package org.drillwright.print.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillwright.model.CardSize;
import org.drillwright.print.diagram.Legend;
import org.drillwright.print.diagram.Sample;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Plate;
import org.drillwright.print.layout.block.Setting;
import org.drillwright.print.layout.block.Slab;
import org.drillwright.print.layout.fit.CardArea;
import org.drillwright.print.layout.fit.Columns;
import org.drillwright.print.layout.fit.Largest;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.Typefaces;

/**
 * The conduct of the hall and the legend of the pictures, deferring to the national federation, local codes and a
 * qualified instructor. On one card where that can be read; else conduct and legend on a card each; on small cards on
 * more.
 */
public final class SafetyCard {

    private static final List<Label> CONDUCT = List.of(
            Label.SAFETY_BEFORE,
            Label.SAFETY_SALUTE,
            Label.SAFETY_MASK,
            Label.SAFETY_SILENCE,
            Label.SAFETY_COUNT,
            Label.SAFETY_FORCE,
            Label.SAFETY_BLADE,
            Label.SAFETY_STOP);

    /** No card is so small that one item does not fit. */
    private static final int MOST_CARDS = 12;

    private final CardArea area;
    private final Scale floor;
    private final Labels labels;
    private final Typefaces faces;
    private final List<Sample> legend;

    private SafetyCard(CardSize size, Labels labels, Typefaces faces) {
        this.area = CardArea.of(size);
        this.floor = Scale.floor(size, faces);
        this.labels = labels;
        this.faces = faces;
        this.legend = Legend.in(labels.language());
    }

    /** As few cards as hold it. */
    public static List<Frame> lay(CardSize size, Labels labels, Typefaces faces) {
        SafetyCard card = new SafetyCard(size, labels, faces);
        for (int cards = 1; cards <= MOST_CARDS; cards++) {
            int wanted = cards;
            Optional<List<Frame>> laid = Largest.fitting(card.floor, scale -> card.on(wanted, scale));
            if (laid.isPresent()) {
                return laid.get();
            }
        }
        throw new IllegalStateException("a card of size " + size.word() + " cannot hold one rule of conduct");
    }

    /** What stands behind so many cards: where the safety card takes several, they follow each other. */
    static List<Frame> behind(int cards, CardSize size, Labels labels, Typefaces faces) {
        List<Frame> safety = lay(size, labels, faces);
        return IntStream.range(0, cards)
                .mapToObj(at -> safety.get(at % safety.size()))
                .toList();
    }

    /** In reading order, on as many cards as wanted, each filled as far as it goes. */
    private Optional<List<Frame>> on(int cards, Scale scale) {
        Plate plate = new Plate(area, scale, faces);
        List<Frame> laid = new ArrayList<>();
        List<Slab> on = new ArrayList<>(List.of(title(plate, 1, cards)));
        for (Slab next : slabs(plate)) {
            if (height(on) + next.height() > plate.room()) {
                Optional<Frame> full = plate.card(on);
                if (full.isEmpty() || laid.size() + 1 == cards) {
                    return Optional.empty();
                }
                laid.add(full.get());
                on = new ArrayList<>(List.of(title(plate, laid.size() + 1, cards)));
            }
            on.add(next);
        }
        Optional<Frame> last = plate.card(on);
        last.ifPresent(laid::add);
        return last.isPresent() && laid.size() == cards ? Optional.of(laid) : Optional.empty();
    }

    private static double height(List<Slab> slabs) {
        return slabs.stream().mapToDouble(Slab::height).sum();
    }

    private Slab title(Plate plate, int card, int cards) {
        return plate.title(
                labels.text(Label.SAFETY_TITLE),
                cards == 1 ? Optional.empty() : Optional.of(labels.text(Label.ONE_OF, card, cards)));
    }

    private List<Slab> slabs(Plate plate) {
        double size = plate.scale().cue();
        List<Slab> slabs = new ArrayList<>();
        slabs.add(plate.paragraph(
                plate.words(Face.BOLD, labels.text(Label.SAFETY_RISK) + " " + labels.text(Label.DEFERRAL)), size));
        CONDUCT.forEach(label -> slabs.add(plate.item(labels.text(label))));
        List<Slab> rows = legend.stream().map(sample -> row(sample, plate)).toList();
        slabs.add(Slab.stack(List.of(plate.head(labels.text(Label.LEGEND_TITLE)), rows.get(0))));
        slabs.addAll(rows.subList(1, rows.size()));
        return slabs;
    }

    /** A sign, and its meaning beside it. */
    private Slab row(Sample sample, Plate plate) {
        double size = plate.scale().cue();
        double picture = Columns.pictureWidth(plate.scale());
        double x = area.left() + picture + 0.7 * size;
        Setting set = plate.setting(plate.words(Face.REGULAR, sample.words()), size, x, 0, area.right() - x);
        double height = Math.max(set.height(), sample.height(picture));
        double down = (height - set.height()) / 2;
        List<Mark> sign = sample.draw(area.left(), (height - sample.height(picture)) / 2, picture);
        Node words = new Node.Words(Role.PARAGRAPH, set.lines()).moved(0, down);
        return new Slab(height + 0.3 * size, sign, List.of(words), set.broken());
    }
}
