package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.notation.Action.Reply;
import org.drillwright.notation.Action.Role;

/**
 * Judges touches with the counts before and behind at hand: who is hit says so on the same count or on the next one (the
 * fencer who is hit acknowledges it: Waite 1880, p. 91), and nobody takes a touch that does not come.
 */
final class Hindsight {

    private final List<Count> counts;

    private Hindsight(List<Count> counts) {
        this.counts = counts;
    }

    static List<Count> of(List<Count> counts) {
        return new Hindsight(counts).judged();
    }

    private List<Count> judged() {
        List<Count> judged = new ArrayList<>();
        for (int at = 0; at < counts.size(); at++) {
            judged.add(judged(at));
        }
        return judged;
    }

    private Count judged(int at) {
        Count count = counts.get(at);
        List<Played> moves = new ArrayList<>();
        for (Played one : count.moves()) {
            moves.add(one.move().isCertain() ? judged(one, at) : one);
        }
        return new Count(count.begin(), moves, count.end(), count.unmet());
    }

    private Played judged(Played one, int at) {
        boolean receives = one.move().action().isReply(Reply.RECEIVE);
        boolean holds = holdsUnderRiposte(one) && !takes(one.move().by(), at);
        if (!receives && !holds) {
            return one;
        }
        List<Refusal> refusals = new ArrayList<>(one.refusals());
        List<Question> asked = new ArrayList<>(one.asked());
        if (receives) {
            Fact<Boolean> hit = hit(one.move().by(), at);
            asked.add(new Question("attack", hit.isKnown(), hit.since()));
            if (hit.is(false)) {
                refusals.add(new Refusal.NothingToTake());
            }
        }
        if (holds) {
            refusals.add(new Refusal.HoldUnderAttack());
        }
        return one.refused(refusals, asked);
    }

    /** To hold, in the lunge or on guard, is no word of being hit; the play lets it pass under a riposte until both are known. */
    private static boolean holdsUnderRiposte(Played one) {
        boolean holds =
                one.move().action().isReply(Reply.HOLD) || one.move().action().isReply(Reply.WAIT);
        Optional<Role> role =
                one.before().attackOn(one.move().by()).filter(Attack::meant).map(Attack::role);
        return holds
                && role.filter(known -> known == Role.RIPOSTE || known == Role.COUNTER_RIPOSTE)
                        .isPresent();
    }

    private Stream<Played> moves(int at) {
        return at >= 0 && at < counts.size() ? counts.get(at).moves().stream() : Stream.empty();
    }

    /** Whether a side takes a touch or owns to it on this count or the next, or may. */
    private boolean takes(Side side, int from) {
        return Stream.concat(moves(from), moves(from + 1))
                .filter(one -> one.move().by() == side)
                .anyMatch(one ->
                        LeftUnmet.isOwningTo(one.move().action()) || one.move().isInDoubt());
    }

    /** Whether anything comes at a side on this count, or has come on the one before and was neither parried nor gone from. */
    private Fact<Boolean> hit(Side side, int at) {
        boolean comes = attacks(side, at)
                .anyMatch(attack -> attack.value().flatMap(known -> known).isPresent());
        List<AttackEnd> before = at == 0 ? List.of() : ends(side, counts.get(at - 1));
        if (comes || before.stream().anyMatch(Hindsight::arrives)) {
            return Fact.of(true);
        }
        boolean doubted = Stream.concat(moves(at - 1), moves(at))
                .anyMatch(one -> one.move().by() == side.other() && one.move().isInDoubt());
        boolean open = before.stream().anyMatch(AttackEnd.Unknown.class::isInstance);
        return Stream.concat(attacks(side, at - 1), attacks(side, at))
                .filter(attack -> !attack.isKnown())
                .findFirst()
                .map(attack -> Fact.<Boolean>unknown(attack.since()))
                .orElseGet(() -> doubted || open ? Fact.unknown(Where.WORDS_NOT_READ) : Fact.of(false));
    }

    /** What is under way at a side before and behind each move of a count. */
    private Stream<Fact<Optional<Attack>>> attacks(Side side, int at) {
        return moves(at)
                .flatMap(one -> Stream.of(one.before().on(side), one.after().on(side)));
    }

    /** How all that came at a side on a count has ended there. */
    private static List<AttackEnd> ends(Side side, Count count) {
        Stream<AttackEnd> launched = IntStream.range(0, count.moves().size())
                .filter(move -> count.moves().get(move).move().by() == side.other())
                .mapToObj(move -> AttackEnd.of(count, move))
                .flatMap(Optional::stream);
        return Stream.concat(launched, AttackEnd.ofPending(count, side).stream())
                .toList();
    }

    private static boolean arrives(AttackEnd end) {
        return end instanceof AttackEnd.Received
                || end instanceof AttackEnd.NotMet
                || end instanceof AttackEnd.PastTheParry
                || end instanceof AttackEnd.Stopped
                || end instanceof AttackEnd.UnderWay;
    }
}
