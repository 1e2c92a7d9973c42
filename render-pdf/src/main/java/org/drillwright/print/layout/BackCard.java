package org.drillwright.print.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.Drill;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Plate;
import org.drillwright.print.layout.block.Setting;
import org.drillwright.print.layout.block.Slab;
import org.drillwright.print.layout.fit.CardArea;
import org.drillwright.print.layout.fit.Columns;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;

/**
 * Backs with pictures and longer notes: behind the first card of a drill its purpose and note, behind each card the
 * pictures and notes of its counts. A picture is also said in words where there is room for them.
 */
final class BackCard {

    /** The numeral's size, as a share of the type size. */
    private static final double NUMERAL = 1.8;

    private final Drill drill;
    private final List<Picture> pictures;
    private final Labels labels;
    private final boolean spoken;

    BackCard(Drill drill, List<Picture> pictures, Labels labels, boolean spoken) {
        this.drill = drill;
        this.pictures = pictures;
        this.labels = labels;
        this.spoken = spoken;
    }

    /** The backs of a drill's cards at one scale, or nothing if a part does not fit behind its card. */
    Optional<List<Frame>> on(List<Integer> shares, Plate plate) {
        List<Frame> backs = new ArrayList<>();
        int start = 0;
        for (int card = 0; card < shares.size(); card++) {
            int end = start + shares.get(card);
            String part = labels.text(Label.ONE_OF, card + 1, shares.size());
            List<Slab> slabs = new ArrayList<>();
            slabs.add(plate.title(
                    drill.title().isBlank() ? drill.id() : drill.title(),
                    shares.size() == 1 ? Optional.empty() : Optional.of(part)));
            if (card == 0) {
                slabs.addAll(notes(plate));
            }
            for (int count = start; count < end; count++) {
                slabs.add(count(count, count > start, plate));
            }
            Optional<Frame> back = plate.card(slabs);
            if (back.isEmpty()) {
                return Optional.empty();
            }
            backs.add(back.get());
            start = end;
        }
        return Optional.of(backs);
    }

    private List<Slab> notes(Plate plate) {
        return Stream.of(note(Label.PURPOSE, drill.purpose(), plate), note(Label.NOTE, drill.note(), plate))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Slab> note(Label label, String text, Plate plate) {
        return text.isBlank()
                ? Optional.empty()
                : Optional.of(plate.paragraph(
                        plate.labelled(labels.text(label), text), plate.scale().cue()));
    }

    /** Its numeral, its picture, and beside the picture what there is to say. */
    private Slab count(int at, boolean follows, Plate plate) {
        CardArea area = plate.area();
        double size = plate.scale().cue();
        double pad = 0.35 * size;
        double left = area.left() + plate.faces().of(Face.BOLD).width("00") * NUMERAL * size + 0.5 * size;
        double beside = left + Columns.pictureWidth(plate.scale()) + 0.8 * size;
        Setting words =
                plate.setting(plate.words(Face.REGULAR, said(at, follows)), size, beside, pad, area.right() - beside);
        List<Node> content = new ArrayList<>(List.of(numeral(at, pad, plate)));
        Optional<Node.Figure> figure =
                picture(at).map(picture -> picture.draw(left, pad, Columns.pictureWidth(plate.scale())));
        figure.ifPresent(content::add);
        if (!words.lines().isEmpty()) {
            content.add(new Node.Words(Role.PARAGRAPH, words.lines()));
        }
        double height = Math.max(
                Math.max(words.height(), NUMERAL * size),
                figure.map(drawn -> drawn.box().height()).orElse(0.0));
        Mark rule = new Mark.Line(area.left(), 0, area.right(), 0, 0.5, Ink.BLACK);
        return new Slab(height + 2 * pad, List.of(rule), content, words.broken());
    }

    private Node numeral(int at, double top, Plate plate) {
        double size = NUMERAL * plate.scale().cue();
        double baseline = top + plate.faces().of(Face.BOLD).capHeight() * size;
        String numeral = String.valueOf(drill.steps().get(at).number().orElse(at + 1));
        return new Node.Words(
                Role.PARAGRAPH,
                List.of(new Mark.Text(plate.area().left(), baseline, size, Face.BOLD, numeral, Ink.BLACK)));
    }

    private Optional<Picture> picture(int at) {
        return at < pictures.size() ? Optional.of(pictures.get(at)) : Optional.empty();
    }

    /** The note of a count, and what its picture shows; what the picture above shows as well is said there. */
    private String said(int at, boolean follows) {
        Optional<String> picture =
                gist(at).filter(words -> !follows || !gist(at - 1).equals(Optional.of(words)));
        return (drill.steps().get(at).note() + " " + picture.orElse("")).strip();
    }

    private Optional<String> gist(int at) {
        return picture(at).filter(one -> spoken).map(Picture::gist);
    }
}
