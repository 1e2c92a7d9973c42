package org.drillwright.print.impose;

import java.util.ArrayList;
import java.util.List;

/** Shares a large set out on several documents, so that no document needs more memory than a small computer has. */
public final class Volumes {

    /** A document of so many cards is laid and written in 256 MB with room to spare; measured. */
    public static final int CARDS = 1000;

    private Volumes() {}

    /**
     * Whole drills, in their order, in as few volumes as hold them; the cards of a drill are never parted.
     *
     * @param drills for each drill its cards
     * @param most how many cards a volume holds; a drill of more has a volume of its own
     */
    public static <T> List<List<T>> of(List<List<T>> drills, int most) {
        if (most < 1) {
            throw new IllegalArgumentException("a volume holds at least one card");
        }
        List<List<T>> volumes = new ArrayList<>();
        List<T> open = new ArrayList<>();
        for (List<T> cards : drills) {
            if (!open.isEmpty() && open.size() + cards.size() > most) {
                volumes.add(List.copyOf(open));
                open.clear();
            }
            open.addAll(cards);
        }
        if (!open.isEmpty()) {
            volumes.add(List.copyOf(open));
        }
        return volumes;
    }

    /** The name of one volume's file: {@code cards.pdf} of three becomes {@code cards-1-of-3.pdf}. */
    public static String file(String name, int volume, int of) {
        if (of == 1) {
            return name;
        }
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        String ending = dot > 0 ? name.substring(dot) : "";
        return stem + "-" + volume + "-of-" + of + ending;
    }
}
