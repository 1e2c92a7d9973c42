package org.drillwright.tell;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.Hall;

/** Lanes of a hall for a terminal. */
public final class HallText {

    private HallText() {}

    public static String of(Floor floor, PairingPlan pairs) {
        Page page = new Page();
        page.wrapped("", floor.layout().sentence());
        page.gap();
        sizes(floor.layout().hall()).forEach(size -> page.line("  " + size));
        page.list("Lanes, in metres from one corner (along the length, along the width)", lanes(floor));
        page.list("To know", toKnow(floor, pairs));
        return page.toString();
    }

    /** The hall, a lane, and what is kept clear. */
    private static List<String> sizes(Hall hall) {
        return List.of(
                "Hall " + metres(hall.length()) + " x " + metres(hall.width()) + " m",
                "Lane " + metres(hall.laneLength()) + " x " + metres(hall.laneWidth()) + " m",
                "Clear space: " + metres(hall.sideGap()) + " m between lanes side by side, " + metres(hall.endGap())
                        + " m end to end",
                "Clear space: " + metres(hall.sideMargin()) + " m from a lane's side to a wall, "
                        + metres(hall.endMargin()) + " m from its end");
    }

    /** Waves, and how people change over. */
    static List<String> toKnow(Floor floor, PairingPlan pairs) {
        List<String> sentences = new ArrayList<>();
        if (floor.waves() > 1) {
            sentences.add("There are more pairs than lanes: each round is worked in " + floor.waves()
                    + " waves; those waiting stand outside the clear space.");
        }
        if (pairs.method().isWalked() && !pairs.changes().isEmpty()) {
            List<String> walk = ChangeWords.of(pairs.changes());
            sentences.add(walk.get(walk.size() - 1));
        } else if (pairs.rounds().size() > 1) {
            sentences.add("At each change everyone reads their place from the sheet.");
        }
        return sentences;
    }

    private static List<String> lanes(Floor floor) {
        List<String> lines = new ArrayList<>();
        for (int at = 0; at < floor.places().size(); at++) {
            LaneLayout.Lane lane = floor.lanes().get(at);
            lines.add(places(floor.places().get(at)) + ": from " + metres(lane.x()) + ", " + metres(lane.y()) + " to "
                    + metres(lane.x() + lane.length()) + ", " + metres(lane.y() + lane.width()));
        }
        return lines;
    }

    /** Such as {@code place 3} or {@code places 3 and 15}. */
    static String places(List<Integer> places) {
        return (places.size() == 1 ? "place " : "places ")
                + String.join(" and ", places.stream().map(String::valueOf).toList());
    }

    static String metres(int centimetres) {
        return BigDecimal.valueOf(centimetres, 2).stripTrailingZeros().toPlainString();
    }
}
