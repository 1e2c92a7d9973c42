package org.drillwright.print.command.watch.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;

/**
 * A drill's pictures on one floor: start, counts, closing, of a count that holds several strokes each of them. Whoever stands
 * still stands still on the screen too, and the others come and go. Lengths are points.
 */
final class PictureStrip {

    /** How many pictures lie between two. */
    static final int BETWEEN = 6;

    /** How wide a picture is; the page makes it as wide as it likes. */
    private static final double WIDTH = 200;

    /** Strokes at a picture's edge are not to be cut in half. */
    private static final double EDGE = 4;

    /** The two may walk so far from picture to picture; if they walk further the floor moves under them. */
    private static final double WALK = 60;

    private static final String GROUND = "ground";

    private final List<Integer> shots;
    private final List<Picture> pictures;
    private final List<Double> lefts;
    private final double floor;
    private final double width;
    private final double height;

    /**
     * @param steps start, counts, closing
     */
    PictureStrip(List<Picture> steps) {
        this.shots = steps.stream().map(step -> step.shots().size()).toList();
        this.pictures = steps.stream().flatMap(step -> step.shots().stream()).toList();
        this.lefts = lefts(pictures);
        this.floor = EDGE + most(picture -> picture.floor(WIDTH));
        this.width = lefts.stream().mapToDouble(left -> left).max().orElse(0) + WIDTH + EDGE;
        this.height = floor + most(picture -> picture.height(WIDTH) - picture.floor(WIDTH)) + EDGE;
    }

    private double most(ToDoubleFunction<Picture> length) {
        return pictures.stream().mapToDouble(length).max().orElse(0);
    }

    /** Where the left edge of each is, so that all stand on one floor. */
    private static List<Double> lefts(List<Picture> pictures) {
        List<Double> walked = new ArrayList<>();
        for (int at = 0; at < pictures.size(); at++) {
            walked.add(at == 0 ? 0.0 : walked.get(at - 1) + pictures.get(at - 1).shift(pictures.get(at), WIDTH));
        }
        double least = walked.stream().min(Comparator.naturalOrder()).orElse(0.0);
        double most = walked.stream().max(Comparator.naturalOrder()).orElse(0.0);
        double share = Math.min(1, WALK / Math.max(1, most - least));
        List<Double> lefts = new ArrayList<>();
        for (int at = 0; at < pictures.size(); at++) {
            lefts.add(walked.get(at) * share - pictures.get(at).middle(WIDTH));
        }
        double first = lefts.stream().min(Comparator.naturalOrder()).orElse(0.0);
        return lefts.stream().map(left -> left - first + EDGE).toList();
    }

    /** Of how many pictures each step is, in their order. */
    List<Integer> shots() {
        return shots;
    }

    /** How many lie between each and the next. */
    List<Integer> between() {
        return IntStream.range(0, pictures.size()).mapToObj(this::between).toList();
    }

    /** One of them, from 0. */
    Optional<Frame> picture(int at) {
        if (at >= pictures.size()) {
            return Optional.empty();
        }
        Picture picture = pictures.get(at);
        return Optional.of(frame(picture.draw(lefts.get(at), floor - picture.floor(WIDTH), WIDTH)));
    }

    /** How many lie between one and the next: none at the end, and where something is not known of how they stand. */
    private int between(int at) {
        return at + 1 < pictures.size() && pictures.get(at).leadsTo(pictures.get(at + 1)) ? BETWEEN : 0;
    }

    /** One of those between one and the next, from 1. */
    Optional<Frame> between(int at, int number) {
        if (number < 1 || number > between(at)) {
            return Optional.empty();
        }
        double share = number / (BETWEEN + 1.0);
        double middle = middle(at) + (middle(at + 1) - middle(at)) * share;
        return pictures.get(at)
                .towards(pictures.get(at + 1), share, middle, floor, WIDTH)
                .map(this::frame);
    }

    private double middle(int at) {
        return lefts.get(at) + pictures.get(at).middle(WIDTH);
    }

    private Frame frame(Node.Figure figure) {
        Rectangle box = new Rectangle(0, 0, width, height);
        List<Mark> marks = figure.marks().stream()
                .map(mark -> mark.moved(figure.box().x(), figure.box().y()))
                .map(this::widened)
                .toList();
        return new Frame(width, height, EDGE, List.of(), List.of(new Node.Figure(figure.alternative(), box, marks)));
    }

    /** The floor goes from edge to edge. */
    private Mark widened(Mark mark) {
        if (mark instanceof Mark.Named named && named.name().equals(GROUND)) {
            return new Mark.Named(GROUND, named.marks().stream().map(this::line).toList());
        }
        return mark;
    }

    private Mark line(Mark mark) {
        return mark instanceof Mark.Line line
                ? new Mark.Line(EDGE, line.y1(), width - EDGE, line.y2(), line.width(), line.ink())
                : mark;
    }
}
