package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Language;
import org.drillwright.phrase.Replay;
import org.drillwright.print.Example;
import org.drillwright.print.Told;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;

/** Counts of the example school, and some told here, on one sheet, feet on one line in each row: what pictures look like. */
public final class Counts {

    private static final String GUARD = "On guard in sixte, blades apart, at lunge distance.";

    /**
     * A count, and what is to be seen in it.
     *
     * @param follower what the follower does where it is told here; {@code drill} then is what the leader does
     */
    private record Count(String drill, int number, String seen, Optional<String> follower) {

        Count(String drill, int number, String seen) {
            this(drill, number, seen, Optional.empty());
        }

        static Count told(String leader, String follower, String seen) {
            return new Count(leader, 1, seen, Optional.of(follower));
        }

        Replay replay() {
            return follower.map(other -> Told.count("epee", GUARD, drill, other))
                    .orElseGet(() -> Example.drill(drill).replay());
        }
    }

    private static final List<Count> COUNTS = List.of(
            new Count("straight-thrust-with-lunge", 1, "thrust, lands"),
            new Count("parry-of-quarte", 1, "parried by quarte"),
            new Count("parry-of-sixte", 1, "parried by sixte"),
            new Count("parry-of-septime", 1, "parried by septime"),
            new Count("epee-parry-of-octave", 1, "épée: parried by octave"),
            new Count("epee-parry-of-octave", 2, "épée: the forearm"),
            new Count("parry-of-quarte", 2, "riposte, arm alone"),
            new Count("beat-and-thrust", 2, "riposte with a lunge"),
            new Count("counter-riposte", 2, "leader parries sixte"),
            new Count("disengage", 1, "disengage, lands"),
            new Count("cut-over", 1, "cut-over, parried"),
            new Count("circular-parry-of-sixte", 1, "circular sixte"),
            new Count("one-two", 1, "feint draws sixte"),
            new Count("epee-redoublement", 1, "the follower is gone"),
            new Count("parry-of-quarte", 3, "recovery"),
            new Count("keeping-distance-with-a-partner", 1, "steps"),
            new Count("counter-disengage", 1, "engaged"),
            new Count("opposite-hands-circular-quarte", 2, "left-hander hit"),
            new Count("sabre-cut-to-head", 1, "sabre: quinte"),
            new Count("sabre-cut-to-head", 2, "sabre: flank"),
            new Count("sabre-exchange", 2, "sabre: riposte"),
            new Count("four-positions-of-the-hand", 3, "alone: octave"),
            new Count("appel-and-jumps", 2, "alone: jump"),
            new Count("advance-and-lunge-at-a-mark", 3, "alone: lunge at a mark"),
            Count.told("Straight thrust to the high inside line with a fleche.", "Receive the hit.", "flèche, lands"),
            Count.told("Straight thrust to the high inside line with a lunge.", "Duck.", "ducked"),
            Count.told("Straight thrust to the high inside line with a lunge.", "Sidestep.", "off the line"),
            Count.told("Straight thrust to the high inside line with a lunge.", "Lean back.", "drawn back"),
            Count.told("Straight thrust to the high inside line.", "Hold.", "falls short"),
            Count.told("Bring the rear foot up.", "Hold.", "rear foot brought up"),
            Count.told("Cross step forward.", "Cross step back.", "steps that cross"),
            new Count("appel-and-jumps", 1, "alone: stamp"),
            new Count("salute", 1, "alone: salute"),
            new Count("salute", 2, "alone: at rest"));

    private static final int COLUMNS = 4;
    private static final double WIDTH = Millimetres.toPoints(30);
    private static final double ALONE = WIDTH * 20 / 28;
    private static final double ROW = Millimetres.toPoints(29);
    private static final double EDGE = 8;

    private Counts() {}

    public static Frame sheet() {
        List<Node> pictures = new ArrayList<>();
        List<Mark> captions = new ArrayList<>();
        for (int at = 0; at < COUNTS.size(); at++) {
            Count count = COUNTS.get(at);
            double x = EDGE + at % COLUMNS * (WIDTH + 2 * EDGE);
            double bottom = EDGE + (at / COLUMNS + 1) * ROW - 12;
            Picture picture = Pictures.of(count.replay(), Language.ENGLISH).get(count.number() - 1);
            double width = picture.isAlone() ? ALONE : WIDTH;
            pictures.add(picture.draw(x, bottom - picture.height(width), width));
            captions.add(new Mark.Text(x, bottom + 8, 6, Face.REGULAR, count.seen(), Ink.BLACK));
        }
        double rows = Math.ceil(COUNTS.size() / (double) COLUMNS);
        return new Frame(
                2 * EDGE + COLUMNS * WIDTH + (COLUMNS - 1) * 2 * EDGE, 2 * EDGE + rows * ROW, 0, captions, pictures);
    }
}
