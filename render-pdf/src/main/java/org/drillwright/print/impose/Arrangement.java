package org.drillwright.print.impose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.print.frame.Rectangle;

/**
 * Where cards lie on a sheet, in points: bands of upright cards and bands of turned ones, so that every cut goes from
 * edge to edge of what is left. Of all such ways the one with most cards, and of those the plainest.
 */
record Arrangement(List<Place> places) {

    /** Sums of lengths are off by less than this. */
    private static final double ROUNDING = 1e-6;

    /** Where a card lies, and whether it lies on its side. */
    record Place(Rectangle box, boolean turned) {}

    Arrangement {
        places = List.copyOf(places);
    }

    static Arrangement of(double cardWidth, double cardHeight, double sheetWidth, double sheetHeight) {
        Stream<Arrangement> inRows = bands(cardWidth, cardHeight, sheetWidth, sheetHeight);
        Stream<Arrangement> inColumns =
                bands(cardHeight, cardWidth, sheetHeight, sheetWidth).map(Arrangement::mirrored);
        return Stream.concat(inRows, inColumns)
                .max(Comparator.comparingInt((Arrangement made) -> made.places().size())
                        .thenComparing(Arrangement::alike)
                        .thenComparing(Arrangement::uprights))
                .map(best -> best.centred(sheetWidth, sheetHeight))
                .orElseThrow();
    }

    /** Every number of bands of one kind, filled up with bands of the other. */
    private static Stream<Arrangement> bands(double width, double height, double across, double down) {
        List<Arrangement> ways = new ArrayList<>();
        for (int first = times(height, down); first >= 0; first--) {
            int second = times(width, down - first * height);
            List<Place> places = new ArrayList<>();
            fill(places, 0, first, width, height, across, false);
            fill(places, first * height, second, height, width, across, true);
            ways.add(new Arrangement(places));
        }
        return ways.stream();
    }

    private static void fill(
            List<Place> places, double top, int bands, double width, double height, double across, boolean turned) {
        for (int band = 0; band < bands; band++) {
            for (int at = 0; at < times(width, across); at++) {
                places.add(new Place(new Rectangle(at * width, top + band * height, width, height), turned));
            }
        }
    }

    private static int times(double length, double within) {
        return (int) Math.floor(within / length + ROUNDING);
    }

    /** Rows as columns. */
    private Arrangement mirrored() {
        return new Arrangement(places.stream()
                .map(place -> new Place(
                        new Rectangle(
                                place.box().y(),
                                place.box().x(),
                                place.box().height(),
                                place.box().width()),
                        place.turned()))
                .toList());
    }

    private boolean alike() {
        return places.stream().map(Place::turned).distinct().count() < 2;
    }

    private long uprights() {
        return places.stream().filter(place -> !place.turned()).count();
    }

    private Arrangement centred(double sheetWidth, double sheetHeight) {
        double dx = (sheetWidth
                        - places.stream()
                                .mapToDouble(place -> place.box().right())
                                .max()
                                .orElse(0))
                / 2;
        double dy = (sheetHeight
                        - places.stream()
                                .mapToDouble(place -> place.box().bottom())
                                .max()
                                .orElse(0))
                / 2;
        return moved(dx, dy);
    }

    /** The same places, each smaller by so much at its right and bottom: what was added for the space between. */
    Arrangement shrunk(double by) {
        return new Arrangement(places.stream()
                .map(place -> new Place(
                        new Rectangle(
                                place.box().x(),
                                place.box().y(),
                                place.box().width() - by,
                                place.box().height() - by),
                        place.turned()))
                .toList());
    }

    Arrangement moved(double dx, double dy) {
        return new Arrangement(places.stream()
                .map(place -> new Place(place.box().moved(dx, dy), place.turned()))
                .toList());
    }
}
