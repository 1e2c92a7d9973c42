package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Contact;
import org.drillwright.notation.Action.Depth;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Line;
import org.drillwright.notation.Move;
import org.drillwright.notation.Position;
import org.drillwright.source.Span;

/**
 * What the program holds possible out of a wider alphabet than that of {@link Possible}: who stands on guard and is not
 * attacked also engages, changes the engagement, beats or binds in each of four positions, and presses; and anybody glides,
 * counter-disengages and, after an attack of one's own, renews it.
 *
 * @param struck who has attacked before
 */
record Wider(State state, Setting setting, Set<Side> struck) {

    private static final List<Position> POSITIONS =
            List.of(Position.QUARTE, Position.SIXTE, Position.SEPTIME, Position.OCTAVE);

    private static final List<Line> LINES =
            List.of(Line.HIGH_INSIDE, Line.HIGH_OUTSIDE, Line.LOW_INSIDE, Line.LOW_OUTSIDE);

    /** The moves in the oracle's words. */
    Map<String, Wider> moves() {
        Map<String, Wider> moves = new LinkedHashMap<>();
        PossibleTest.moves(state, setting).forEach((words, next) -> moves.put(words, after(words, next)));
        for (Side by : Side.values()) {
            boolean attacked = state.on(Side.LEADER)
                    .value()
                    .flatMap(one -> one)
                    .or(() -> state.on(Side.FOLLOWER).value().flatMap(one -> one))
                    .filter(Attack::meant)
                    .isPresent();
            if (!attacked) {
                blade(by, moves);
                strokes(by, moves);
            }
        }
        return moves;
    }

    private Wider after(String words, State next) {
        Side by = words.startsWith("L ") ? Side.LEADER : Side.FOLLOWER;
        boolean strikes = words.matches(".*\\b(HI|HO|LI|LO)");
        Set<Side> now = EnumSet.noneOf(Side.class);
        now.addAll(struck);
        if (strikes) {
            now.add(by);
        }
        return new Wider(next, setting, now);
    }

    private void blade(Side by, Map<String, Wider> moves) {
        if (state.of(by).isLunged()) {
            return;
        }
        Map<String, Contact> kinds = Map.of(
                "engage",
                Contact.ENGAGE,
                "change",
                Contact.CHANGE_ENGAGEMENT,
                "beat",
                Contact.BEAT,
                "bind",
                Contact.BIND);
        for (Position position : POSITIONS) {
            kinds.forEach((word, contact) -> put(
                    by,
                    word + " " + position.word(),
                    List.of(new Action.OnBlade(contact, Optional.of(position), Aim.UNSTATED)),
                    moves));
        }
        put(by, "press", List.of(new Action.OnBlade(Contact.PRESS, Optional.empty(), Aim.UNSTATED)), moves);
    }

    private void strokes(Side by, Map<String, Wider> moves) {
        for (Path path : List.of(Path.GLIDE, Path.COUNTER_DISENGAGE)) {
            stroke(by, path).ifPresent(strike -> strike(by, path == Path.GLIDE ? "glide " : "counter ", strike, moves));
        }
        for (Line line : LINES) {
            strike(
                    by,
                    "renew ",
                    new Action.Strike(Role.REMISE, Path.DIRECT, Aim.at(line), false, false, false, false),
                    moves);
        }
    }

    /** The stroke with the line in which it ends, where that is known. */
    private Optional<Action.Strike> stroke(Side by, Path path) {
        Action.Strike bare = new Action.Strike(Role.ATTACK, path, Aim.UNSTATED, false, false, false, false);
        return new Sighting(state, setting, by, bare)
                .line()
                .value()
                .map(line -> new Action.Strike(Role.ATTACK, path, Aim.at(line), false, false, false, false));
    }

    private void strike(Side by, String way, Action.Strike strike, Map<String, Wider> moves) {
        String line = PossibleTest.line(
                new Sighting(state, setting, by, strike).line().value().orElseThrow());
        put(by, way + line, List.of(strike), moves);
        if (!state.of(by).isLunged() && state.measure().least() > 0) {
            put(by, "lunge " + way + line, List.of(strike, new Action.Lunge(Depth.FULL, Aim.UNSTATED)), moves);
        }
    }

    private void put(Side by, String words, List<Action> actions, Map<String, Wider> moves) {
        List<Clause> parts = new ArrayList<>();
        actions.forEach(action -> parts.add(new Clause(action, Optional.empty(), Span.at(0), Clause.Join.BEGINS)));
        Move move = new Move(by, parts);
        boolean othersLunge = state.of(by.other()).isLunged();
        Moment moment = Moment.alone(by, Fact.HERE, othersLunge, Fact.of(struck.contains(by)));
        Outcome outcome = Play.play(state, move, setting, moment);
        boolean idle = move.isAssault()
                && outcome.next().attackOn(by.other()).filter(Attack::meant).isEmpty();
        if (outcome.refusals().isEmpty() && !idle) {
            String told = (by == Side.LEADER ? "L " : "F ") + words;
            moves.put(told, after(told, outcome.next()));
        }
    }

    long phrases(int depth) {
        if (depth == 0) {
            return 1;
        }
        return moves().values().stream()
                .mapToLong(next -> next.phrases(depth - 1))
                .sum();
    }
}
