package org.drillwright.print.command.printing.chosen;

import java.util.List;

/**
 * The drills picked for printing, in the order of their cards.
 *
 * @param title what the printed file is called in a window's bar
 * @param absent ids that a set names and the folder does not have
 */
public record ChosenDrills(String title, List<ChosenDrill> drills, List<String> absent) {

    public ChosenDrills {
        drills = List.copyOf(drills);
        absent = List.copyOf(absent);
    }

    /** Those that cannot be printed as they are. */
    List<ChosenDrill> faulty() {
        return drills.stream().filter(pick -> !pick.entry().isSound()).toList();
    }
}
