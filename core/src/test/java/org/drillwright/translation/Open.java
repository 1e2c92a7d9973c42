package org.drillwright.translation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.check.Subject;
import org.drillwright.model.Drill;
import org.drillwright.model.Hands;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Move;
import org.drillwright.notation.Position;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Possible;
import org.drillwright.phrase.Rehearsal;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.Setting;
import org.drillwright.phrase.SettingReader;
import org.drillwright.phrase.State;
import org.drillwright.reading.TurnReader;
import org.drillwright.school.SchoolFolder;

/** What is open in phrases, two moves deep. */
final class Open {

    private Open() {}

    /**
     * Every move that is possible at the begin or the end of a count of an example drill, and every one that is possible
     * behind such a move; where one and the same makes both, the two in one turn as well.
     */
    static List<List<Action>> toDepthTwo() {
        Set<List<Action>> all = new LinkedHashSet<>();
        Set<State> seen = new LinkedHashSet<>();
        try {
            for (SchoolFolder.Entry entry :
                    SchoolFolder.open(Path.of("..", "drills")).entries()) {
                entry.subject().ifPresent(subject -> {
                    Setting setting = subject.replay().setting();
                    for (Count count : subject.replay().counts()) {
                        for (State state : List.of(count.begin(), count.end())) {
                            if (seen.add(state)) {
                                from(state, setting, all);
                            }
                        }
                    }
                });
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(all);
    }

    /**
     * The same from every guard: of each weapon, with the hands on the same side and on opposite sides, blades apart and
     * engaged, at each measure that can be named.
     */
    static List<List<Action>> fromEveryGuard() {
        Set<List<Action>> all = new LinkedHashSet<>();
        TurnReader reader = TurnReader.standard();
        try {
            Subject any = SchoolFolder.open(Path.of("..", "drills"))
                    .entry("parry-of-quarte")
                    .flatMap(SchoolFolder.Entry::subject)
                    .orElseThrow();
            for (Weapon weapon : List.of(Weapon.FOIL, Weapon.EPEE, Weapon.SABRE)) {
                for (Hands hands : Hands.values()) {
                    Drill drill = any.drill().withWeapon(weapon).withHands(hands);
                    for (Position guard : Position.values()) {
                        for (String blades : List.of("blades apart", "engaged")) {
                            for (String measure : List.of("extension", "lunge", "advance-lunge")) {
                                String start = "On guard in " + guard.word() + ", " + blades + ", at " + measure
                                        + " distance.";
                                from(drill, any.school(), start, reader, all);
                            }
                        }
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(all);
    }

    private static void from(Drill drill, School school, String start, TurnReader reader, Set<List<Action>> all) {
        Utterance told = reader.readForBoth(start, Side.LEADER);
        Utterance opening = reader.read("Salute. Masks on. " + start);
        Replay replay = Rehearsal.of(
                        SettingReader.of(drill, school, told),
                        new Rehearsal.Words(opening, told, List.of(Map.of()), Utterance.NOTHING))
                .replay();
        from(replay.counts().get(0).begin(), replay.setting(), all);
    }

    private static void from(State state, Setting setting, Set<List<Action>> all) {
        for (Possible.Open first : Possible.in(state, setting)) {
            all.add(actions(first.move()));
            for (Possible.Open second : Possible.in(first.next(), setting)) {
                all.add(actions(second.move()));
                if (first.move().by() == second.move().by()) {
                    List<Action> both = new ArrayList<>(actions(first.move()));
                    both.addAll(actions(second.move()));
                    all.add(List.copyOf(both));
                }
            }
        }
    }

    private static List<Action> actions(Move move) {
        return move.parts().stream().map(Clause::action).toList();
    }
}
