package org.drillwright.print.impose;

/** A large number of cards is shared out on several documents, so that none needs more memory than a small computer has. */
public final class Volumes {

    /** A document of so many cards is laid and written in 256 MB with room to spare; measured. */
    public static final int CARDS = 1000;

    private Volumes() {}

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
