package org.drillwright.print.impose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Rectangle;

/**
 * Short strokes at both ends of every line to cut along: outside the cards where there is room, or else on the line
 * itself, where the knife goes. None lies in the margin that printers leave blank.
 */
final class CropMarks {

    private static final double LENGTH = Millimetres.toPoints(4);
    private static final double AWAY = Millimetres.toPoints(1);
    private static final double WIDTH = 0.25;

    /** Edges nearer than this are one line. */
    private static final double SAME = 0.01;

    private final List<Rectangle> cards;
    private final Rectangle printable;
    private final double away;

    /** @param overrun how far a card's ground may reach beyond its edge, where no mark is to stand */
    CropMarks(List<Rectangle> cards, Rectangle printable, double overrun) {
        this.cards = List.copyOf(cards);
        this.printable = printable;
        this.away = AWAY + overrun;
    }

    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (Cut cut : cuts(box -> new Cut(box.x(), box.y(), box.bottom()), Rectangle::width)) {
            ends(cut, printable.x(), printable.right(), printable.y(), printable.bottom(), false, marks);
        }
        for (Cut cut : cuts(box -> new Cut(box.y(), box.x(), box.right()), Rectangle::height)) {
            ends(cut, printable.y(), printable.bottom(), printable.x(), printable.right(), true, marks);
        }
        return marks;
    }

    /** A line to cut along: its place across, and from where to where it goes. */
    private record Cut(double at, double from, double to) {
        Cut with(Cut other) {
            return new Cut(at, Math.min(from, other.from), Math.max(to, other.to));
        }
    }

    private Iterable<Cut> cuts(Function<Rectangle, Cut> near, Function<Rectangle, Double> thickness) {
        TreeMap<Long, Cut> cuts = new TreeMap<>();
        for (Rectangle card : cards) {
            Cut first = near.apply(card);
            Cut second = new Cut(first.at() + thickness.apply(card), first.from(), first.to());
            cuts.merge(Math.round(first.at() / SAME), first, Cut::with);
            cuts.merge(Math.round(second.at() / SAME), second, Cut::with);
        }
        return cuts.values();
    }

    private void ends(Cut cut, double least, double most, double top, double bottom, boolean across, List<Mark> marks) {
        if (cut.at() < least || cut.at() > most) {
            return;
        }
        stroke(cut.at(), cut.from() - away - LENGTH, cut.from() - away, top, bottom, across)
                .or(() -> onLine(cut.at(), Math.max(cut.from(), top), across))
                .ifPresent(marks::add);
        stroke(cut.at(), cut.to() + away, cut.to() + away + LENGTH, top, bottom, across)
                .or(() -> onLine(cut.at(), Math.min(cut.to(), bottom) - LENGTH, across))
                .ifPresent(marks::add);
    }

    private Optional<Mark> onLine(double at, double from, boolean across) {
        return Optional.of(line(at, from, from + LENGTH, across));
    }

    private Optional<Mark> stroke(double at, double from, double to, double top, double bottom, boolean across) {
        double middle = (from + to) / 2;
        boolean inCard = cards.stream().anyMatch(card -> across ? inside(card, middle, at) : inside(card, at, middle));
        return from < top || to > bottom || inCard ? Optional.empty() : Optional.of(line(at, from, to, across));
    }

    private static boolean inside(Rectangle card, double x, double y) {
        return x > card.x() - SAME && x < card.right() + SAME && y > card.y() - SAME && y < card.bottom() + SAME;
    }

    private static Mark line(double at, double from, double to, boolean across) {
        return across
                ? new Mark.Line(from, at, to, at, WIDTH, Ink.BLACK)
                : new Mark.Line(at, from, at, to, WIDTH, Ink.BLACK);
    }
}
