package org.drillwright.phrase;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.told.StartWords;

/** Gathers what stays the same through a drill from its keys and its start. */
public final class SettingReader {

    private SettingReader() {}

    /** @param start the words of the drill's start, as they were read */
    public static Setting of(Drill drill, School school, Utterance start) {
        Map<Side, Position> guards = new EnumMap<>(Side.class);
        // Blades that may touch are not known to be apart.
        StartWords words = new StartWords(start);
        boolean engaged = words.leavesOpen(StartWords.Part.CONTACT);
        for (Clause clause : start.clauses()) {
            Optional<Stance> stance = StartWords.stance(clause.action());
            Optional<Position> guard = stance.flatMap(Stance::guard).or(() -> placed(clause.action()));
            List<Side> sides = StartWords.sides(clause);
            if (clause.isCertain() && guard.isPresent()) {
                boolean ofOne = clause.subject().isPresent();
                sides.stream()
                        .filter(side -> !words.leavesOpen(StartWords.Part.HAND, side))
                        .forEach(side -> guards.merge(side, guard.get(), (first, later) -> ofOne ? later : first));
            }
            engaged = engaged || stance.flatMap(Stance::engaged).orElse(false);
        }
        ParryTable table = ParryTable.of(drill.weapon(), school.parries().getOrDefault(drill.weapon(), Map.of()));
        return new Setting(drill.weapon(), drill.hands(), drill.form() == Form.PARTNER, table, guards, engaged);
    }

    private static Optional<Position> placed(Action action) {
        if (action instanceof Action.Invite invite) {
            return invite.position();
        }
        return action instanceof Action.Place place ? Optional.of(place.position()) : Optional.empty();
    }
}
