package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Move;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.told.ToldClauses;
import org.drillwright.phrase.told.TurnMoves;
import org.drillwright.wording.Message;

/** A whole drill played: opening, start, count after count, closing. */
public final class Rehearsal {

    /**
     * The words of a drill as they were read.
     *
     * @param counts for each count what each side does
     */
    public record Words(Utterance opening, Utterance start, List<Map<Side, Utterance>> counts, Utterance closing) {

        public Words {
            counts = List.copyOf(counts);
        }

        /** The place of the opening among the parts; the counts follow from 0, and behind them the closing. */
        static final int OPENING = -1;

        /** The same, with other things done in one part: by one side, or by both where the part is no count. */
        public Words with(int part, Side side, UnaryOperator<List<Clause>> change) {
            if (part == OPENING) {
                return new Words(changed(opening, change), start, counts, closing);
            }
            if (part == counts.size()) {
                return new Words(opening, start, counts, changed(closing, change));
            }
            List<Map<Side, Utterance>> now = new ArrayList<>(counts);
            Map<Side, Utterance> turns = new EnumMap<>(Side.class);
            turns.putAll(counts.get(part));
            turns.put(side, changed(turns.getOrDefault(side, Utterance.NOTHING), change));
            now.set(part, turns);
            return new Words(opening, start, now, closing);
        }

        private static Utterance changed(Utterance told, UnaryOperator<List<Clause>> change) {
            return told.doing(change.apply(told.clauses()));
        }

        /** What both are told on a count; nothing behind the last one. */
        Map<Side, Utterance> turns(int count) {
            return count < counts.size() ? counts.get(count) : Map.of();
        }

        /** The same, with no more than so many counts. */
        Words first(int many) {
            return new Words(opening, start, counts.subList(0, Math.min(many, counts.size())), closing);
        }
    }

    private final Setting setting;
    private final Words words;
    private final Replay replay;
    private final List<Taken> taken;
    private final Map<Side, Fact<Boolean>> attacked = new EnumMap<>(Side.class);
    private final Set<Side> footFirst = EnumSet.noneOf(Side.class);

    /** All that a count begins with: what is the same in this, in its words and in those of the next count ends the same. */
    private record Stage(State state, Map<Side, Fact<Boolean>> attacked, Set<Side> footFirst) {

        private Stage {
            attacked = Map.copyOf(attacked);
            footFirst = Set.copyOf(footFirst);
        }
    }

    /** A count as it was played, before it was known what comes behind it. */
    private record Taken(Stage from, Count count, Stage to) {}

    private Rehearsal(Setting setting, Words words, Optional<Rehearsal> before) {
        this.setting = setting;
        this.words = words;
        for (Side side : Side.values()) {
            attacked.put(side, Fact.of(false));
        }
        this.taken = new ArrayList<>();
        this.replay = play(before);
    }

    /** Plays a drill; never throws, whatever it holds. */
    public static Rehearsal of(Setting setting, Words words) {
        return new Rehearsal(setting, words, Optional.empty());
    }

    /** Plays the same drill in other words. What they leave as it was is not played again. */
    public Rehearsal otherwise(Words others) {
        return new Rehearsal(setting, others, Optional.of(this));
    }

    /** The drill as it was played. */
    public Replay replay() {
        return replay;
    }

    /** What it was played from. */
    public Words words() {
        return words;
    }

    private Replay play(Optional<Rehearsal> before) {
        Optional<Rehearsal> begunAlike = before.filter(other -> soundAlike(words.opening(), other.words.opening())
                && words.start().equals(other.words.start()));
        List<Played> opening = new ArrayList<>();
        State opened = begunAlike
                .map(other -> {
                    opening.addAll(other.replay.opening());
                    return other.replay.opened();
                })
                .orElseGet(() -> together(State.atAttention(), words.opening(), Where.OPENING, opening));
        State start = begunAlike
                .map(other -> other.replay.start())
                .orElseGet(() -> new StartState(setting, words.start()).from(opened));
        Stage stage = new Stage(start, attacked, footFirst);
        for (int at = 0; at < words.counts().size(); at++) {
            Stage from = stage;
            int count = at;
            Taken next =
                    before.flatMap(other -> other.taken(count, from, words)).orElseGet(() -> take(count, from));
            taken.add(next);
            stage = next.to();
        }
        List<Count> counts = taken.stream().map(Taken::count).toList();
        List<Played> closing = new ArrayList<>();
        together(stage.state(), words.closing(), Where.CLOSING, closing);
        List<Count> judged = setting.partner() ? Hindsight.of(counts) : counts;
        return new Replay(setting, opening, opened, start, judged, closing);
    }

    /** A count as it was played here, if other words cannot make anything else of it. */
    private Optional<Taken> taken(int at, Stage from, Words others) {
        boolean same = at < taken.size()
                && soundAlike(others.turns(at), words.turns(at))
                && soundAlike(others.turns(at + 1), words.turns(at + 1))
                && taken.get(at).from().equals(from);
        return same ? Optional.of(taken.get(at)) : Optional.empty();
    }

    private static boolean soundAlike(Map<Side, Utterance> one, Map<Side, Utterance> other) {
        return one == other
                || Stream.of(Side.values())
                        .allMatch(side -> soundAlike(
                                one.getOrDefault(side, Utterance.NOTHING),
                                other.getOrDefault(side, Utterance.NOTHING)));
    }

    /** What else a text may say, and of whom it tells, is nothing to those who play it. */
    private static boolean soundAlike(Utterance one, Utterance other) {
        return one.tradeWords() == other.tradeWords()
                && one.clauses().equals(other.clauses())
                && one.unread().equals(other.unread());
    }

    private Taken take(int at, Stage from) {
        attacked.putAll(from.attacked());
        footFirst.clear();
        footFirst.addAll(from.footFirst());
        Count count = count(from.state(), words.turns(at), words.turns(at + 1), Where.count(at + 1));
        return new Taken(from, count, new Stage(count.end(), attacked, footFirst));
    }

    /** Words that concern both unless they name one. */
    private State together(State from, Utterance utterance, Message where, List<Played> played) {
        State state = from;
        for (Clause clause : ToldClauses.of(utterance)) {
            for (Side side : clause.subject().map(List::of).orElse(List.of(Side.values()))) {
                Move move = new Move(side, List.of(clause));
                Outcome outcome = Play.play(state, move, setting, Moment.alone(side, where, false, Fact.of(false)));
                State next = outcome.next();
                if (clause.action() instanceof Action.Unread) {
                    next = masksUnknown(next, where);
                } else if (!clause.isCertain()) {
                    next = InDoubt.masksPerhapsOn(next, where);
                }
                played.add(new Played(move, state, next, outcome.refusals(), outcome.asked()));
                state = next;
            }
        }
        return state;
    }

    private static State masksUnknown(State state, Message where) {
        State next = state;
        for (Side side : Side.values()) {
            next = next.with(side, next.of(side).withMask(Fact.unknown(where)));
        }
        return next;
    }

    private Count count(State begin, Map<Side, Utterance> turns, Map<Side, Utterance> next, Message where) {
        CountOrder order =
                new CountOrder(begin, moves(begin, turns, Side.LEADER), moves(begin, turns, Side.FOLLOWER), setting);
        List<Played> alone = new ArrayList<>();
        Set<Side> lunged = EnumSet.noneOf(Side.class);
        State state = begin;
        for (Optional<Move> turn = order.next(state); turn.isPresent(); turn = order.next(state)) {
            Move move = turn.get();
            Side by = move.by();
            boolean othersLunge =
                    lunged.contains(by.other()) && state.of(by.other()).isLunged();
            State before = order.before(move, state, where);
            Moment moment = new Moment(
                    by,
                    where,
                    othersLunge,
                    attacked.getOrDefault(by, Fact.of(false)),
                    footFirst.contains(by),
                    lunges(next.getOrDefault(by, Utterance.NOTHING), where));
            Outcome outcome = Play.play(before, move, setting, moment);
            alone.add(new Played(move, before, outcome.next(), outcome.refusals(), outcome.asked()));
            state = outcome.next();
            attacked.merge(by, attacks(move, where), Rehearsal::either);
            endPhrase(move, before);
            noteFeet(move, state);
            if (move.lunge().isPresent()) {
                lunged.add(by);
            }
        }
        List<Played> played = setting.partner() ? new BothTogether(setting, alone).judged() : alone;
        return endOf(begin, played, state, turns, next);
    }

    /** Whether a turn holds a lunge; words that were not read may be one. */
    private static Fact<Boolean> lunges(Utterance turn, Message where) {
        List<Clause> clauses = ToldClauses.of(turn);
        boolean doubted =
                clauses.stream().anyMatch(clause -> !clause.isCertain() || clause.action() instanceof Action.Unread);
        boolean lunges = clauses.stream().anyMatch(clause -> clause.action() instanceof Action.Lunge);
        return doubted ? Fact.unknown(where) : Fact.of(lunges);
    }

    /** A touch that is taken ends the phrase: what its attacker does behind it renews nothing. */
    private void endPhrase(Move move, State before) {
        boolean taken = move.action().isReply(Action.Reply.RECEIVE)
                && before.attackOn(move.by()).filter(Attack::meant).isPresent();
        if (taken && move.isCertain()) {
            attacked.put(move.by().other(), Fact.of(false));
        }
    }

    /** A lunge without the arm stands until the arm goes out, the hand parries, or the feet come up. */
    private void noteFeet(Move move, State after) {
        Side by = move.by();
        boolean bare = move.isCertain()
                && move.lunge().isPresent()
                && move.strike().isEmpty()
                && after.of(by).extended().is(false)
                && after.of(by).isLunged();
        boolean over = move.isAssault()
                || move.isInDoubt()
                || move.action() instanceof Action.Parry
                || !after.of(by).isLunged();
        if (bare) {
            footFirst.add(by);
        } else if (over) {
            footFirst.remove(by);
        }
    }

    private static Fact<Boolean> attacks(Move move, Message where) {
        return move.isInDoubt() ? Fact.unknown(where) : Fact.of(move.isAssault());
    }

    private static Fact<Boolean> either(Fact<Boolean> before, Fact<Boolean> now) {
        return before.is(true) || now.is(false) ? before : now;
    }

    private static List<Move> moves(State begin, Map<Side, Utterance> turns, Side side) {
        List<Clause> clauses = ToldClauses.of(turns.getOrDefault(side, Utterance.NOTHING));
        List<Clause> others = ToldClauses.of(turns.getOrDefault(side.other(), Utterance.NOTHING));
        return TurnMoves.of(
                side, MeasureKept.played(clauses, others), begin.of(side).isLunged());
    }

    private static Count endOf(
            State begin, List<Played> played, State last, Map<Side, Utterance> turns, Map<Side, Utterance> next) {
        Map<Side, Refusal> unmet = new EnumMap<>(Side.class);
        State state = last;
        for (Side side : Side.values()) {
            LeftUnmet end = LeftUnmet.of(begin, state, side, played, turns, next);
            end.refusal().ifPresent(refusal -> unmet.put(side, refusal));
            state = end.after();
        }
        return new Count(begin, played, state, unmet);
    }
}
