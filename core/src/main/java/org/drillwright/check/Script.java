package org.drillwright.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.notation.Telling;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.Rehearsal;
import org.drillwright.reading.TurnReader;

/**
 * A drill's words as they were read.
 *
 * @param steps for each count what each side's turn was read as; a caller's word in a solo drill is no action
 */
public record Script(Utterance start, Utterance opening, List<Map<Side, Utterance>> steps, Utterance closing) {

    public Script {
        steps = List.copyOf(steps);
    }

    static Script read(Drill drill, TurnReader reader) {
        List<Map<Side, Utterance>> steps = new ArrayList<>();
        for (Step step : drill.steps()) {
            Map<Side, Utterance> turns = new EnumMap<>(Side.class);
            for (Side side : Side.values()) {
                boolean callersWord = side == Side.LEADER && drill.form() == Form.SOLO;
                turns.put(
                        side,
                        callersWord
                                ? Utterance.NOTHING
                                : reader.read(step.turn(side).map(Turn::read).orElse(""))
                                        .by(side));
            }
            steps.add(turns);
        }
        return new Script(
                reader.readForBoth(drill.start(), teller(steps)),
                reader.read(drill.opening()),
                steps,
                reader.readParting(drill.closing()));
    }

    /** The side by which a drill is told: whose turns name it or say 'I'; the leader, who is told first, if none or both do. */
    private static Side teller(List<Map<Side, Utterance>> steps) {
        return !isTold(steps, Side.LEADER) && isTold(steps, Side.FOLLOWER) ? Side.FOLLOWER : Side.LEADER;
    }

    private static boolean isTold(List<Map<Side, Utterance>> steps, Side side) {
        return steps.stream()
                .map(turns -> turns.getOrDefault(side, Utterance.NOTHING).telling())
                .anyMatch(telling -> telling == Telling.BY_NAME || telling == Telling.FIRST_PERSON);
    }

    /** The same, one turn read otherwise. */
    Script with(int step, Side side, Utterance turn) {
        List<Map<Side, Utterance>> now = new ArrayList<>(steps);
        Map<Side, Utterance> turns = new EnumMap<>(steps.get(step));
        turns.put(side, turn);
        now.set(step, turns);
        return new Script(start, opening, now, closing);
    }

    /** The same, the opening read otherwise. */
    Script opening(Utterance otherwise) {
        return new Script(start, otherwise, steps, closing);
    }

    /** The same, the closing read otherwise. */
    Script closing(Utterance otherwise) {
        return new Script(start, opening, steps, otherwise);
    }

    /** What is played of it. */
    Rehearsal.Words words() {
        return new Rehearsal.Words(opening, start, steps, closing);
    }

    /** What was read of a part around the counts: start, opening or closing. */
    public Utterance part(String name) {
        return switch (name) {
            case "start" -> start;
            case "opening" -> opening;
            case "closing" -> closing;
            default -> throw new IllegalArgumentException("no part of a drill is called " + name);
        };
    }

    /** What one side's turn was read as, counts numbered from 0. */
    public Utterance turn(int step, Side side) {
        return steps.get(step).getOrDefault(side, Utterance.NOTHING);
    }
}
