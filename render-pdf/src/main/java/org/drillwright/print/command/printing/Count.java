package org.drillwright.print.command.printing;

/** A number with its noun. */
public final class Count {

    private Count() {}

    /** {@code 1 card}, {@code 2 cards}. */
    public static String of(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }
}
