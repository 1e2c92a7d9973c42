package org.drillwright.report.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.Hall;
import org.drillwright.wording.Message;

/** Lanes of a hall for a terminal. */
public final class HallText {

    private HallText() {}

    public static String of(Floor floor, PairingPlan pairs, Locale language) {
        TerminalPage page = new TerminalPage(language);
        page.wrapped("", floor.layout().sentence());
        page.gap();
        sizes(floor.layout().hall()).forEach(size -> page.line("  " + page.said(size)));
        page.list(said("lanes"), lanes(floor));
        page.list(said("to.know"), toKnow(floor, pairs));
        return page.toString();
    }

    /** The hall, a lane, and what is kept clear. */
    private static List<Message> sizes(Hall hall) {
        return List.of(
                said("hall.size", Message.metres(hall.length()), Message.metres(hall.width())),
                said("lane.size", Message.metres(hall.laneLength()), Message.metres(hall.laneWidth())),
                said("clear.lanes", Message.metres(hall.sideGap()), Message.metres(hall.endGap())),
                said("clear.walls", Message.metres(hall.sideMargin()), Message.metres(hall.endMargin())));
    }

    /** Waves, and how people change over. */
    static List<Message> toKnow(Floor floor, PairingPlan pairs) {
        List<Message> sentences = new ArrayList<>();
        if (floor.waves() > 1) {
            sentences.add(said("waves", floor.waves()));
        }
        if (pairs.method().isWalked() && !pairs.changes().isEmpty()) {
            List<Message> walk = ChangeWords.of(pairs.changes());
            sentences.add(walk.get(walk.size() - 1));
        } else if (pairs.rounds().size() > 1) {
            sentences.add(said("read.places"));
        }
        return sentences;
    }

    private static List<Message> lanes(Floor floor) {
        List<Message> lines = new ArrayList<>();
        for (int at = 0; at < floor.places().size(); at++) {
            LaneLayout.Lane lane = floor.lanes().get(at);
            List<Integer> places = floor.places().get(at);
            lines.add(Message.counted(
                    HallText.class,
                    "place",
                    places.size(),
                    Message.all(places.stream()
                            .map(place -> Message.plain(String.valueOf(place)))
                            .toList()),
                    Message.metres(lane.x()),
                    Message.metres(lane.y()),
                    Message.metres(lane.x() + lane.length()),
                    Message.metres(lane.y() + lane.width())));
        }
        return lines;
    }

    private static Message said(String key, Object... values) {
        return Message.of(HallText.class, key, values);
    }
}
