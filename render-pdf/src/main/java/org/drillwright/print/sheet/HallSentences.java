package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.Hall;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.sheet.wall.ChangeSentences;

/** Says on a sheet how lanes lie in a hall. */
record HallSentences(HandWords words) {

    /** How many lanes there are, and that the clear spaces are no rule. */
    String lanes(LaneLayout layout) {
        return fitting(layout) + " " + words.text(HandWord.DEFERS);
    }

    private String fitting(LaneLayout layout) {
        Hall hall = layout.hall();
        if (layout.count() == 0) {
            return words.text(
                    HandWord.NO_LANE,
                    words.metres(hall.laneLength() + 2 * hall.endMargin()),
                    words.metres(hall.laneWidth() + 2 * hall.sideMargin()));
        }
        LaneLayout.Block first = layout.blocks().get(0);
        int turned = layout.count() - first.lanes().size();
        String abreast = words.text(first.lengthwise() ? HandWord.ALONG : HandWord.ACROSS, first.abreast());
        return words.counted(
                HandWord.LANES,
                layout.count(),
                turned == 0 ? abreast : words.text(HandWord.TURNED, abreast, turned),
                2 * layout.count());
    }

    /** The hall, a lane, and what is kept clear. */
    List<String> sizes(Hall hall) {
        return List.of(
                words.text(HandWord.HALL_SIZE, words.metres(hall.length()), words.metres(hall.width())),
                words.text(HandWord.LANE_SIZE, words.metres(hall.laneLength()), words.metres(hall.laneWidth())),
                words.text(HandWord.CLEAR_LANES, words.metres(hall.sideGap()), words.metres(hall.endGap())),
                words.text(HandWord.CLEAR_WALLS, words.metres(hall.sideMargin()), words.metres(hall.endMargin())));
    }

    /** Waves, and how people change over. */
    List<String> toKnow(Floor floor, PairingPlan pairs) {
        List<String> sentences = new ArrayList<>();
        if (floor.waves() > 1) {
            sentences.add(words.text(HandWord.HALL_WAVES, floor.waves()));
        }
        if (pairs.method().isWalked() && !pairs.changes().isEmpty()) {
            ChangeSentences changes = new ChangeSentences(words.evening(), Naming.full());
            sentences.add(changes.of(pairs.changes().get(pairs.changes().size() - 1)));
        } else if (pairs.rounds().size() > 1) {
            sentences.add(words.text(HandWord.READ_PLACES));
        }
        return sentences;
    }
}
