package org.drillwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Attempt.Leaves;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** Ways out of a fault that a rule would name: those are named with which the drill, played once more, is refused no more. */
public final class WaysOut {

    private record Way(Message words, List<Amendment> changes) {}

    private final Fault fault;
    /** Of each row only the way that leaves least refused is named, of equals the first. */
    private final List<List<Way>> rows = new ArrayList<>();

    WaysOut(Fault fault) {
        this.fault = fault;
    }

    /** One way more: it is one if any of the changes plays. */
    public WaysOut or(Message words, Amendment... changes) {
        return or(words, List.of(changes));
    }

    /** One way more: it is one if any of the changes plays. */
    public WaysOut or(Message words, List<Amendment> changes) {
        rows.add(List.of(new Way(words, changes)));
        return this;
    }

    /** One way more: the one of these that leaves least refused, of equals the first. */
    public WaysOut orFirst(Map<Message, Amendment> some) {
        rows.add(some.entrySet().stream()
                .map(way -> new Way(way.getKey(), List.of(way.getValue())))
                .toList());
        return this;
    }

    /** The ways that play as one sentence: {@code Disengage, cut over, or beat the blade away first.} */
    public WayOut sentence() {
        return told(names -> Message.either(names).sentence());
    }

    /** The same, said by a rule of what may be chosen from: {@code quarte, sixte, or octave}. */
    public WayOut sentence(UnaryOperator<Message> saying) {
        return told(names -> saying.apply(Message.either(names)));
    }

    /**
     * The ways that play, told by a rule: those that leave least refused. Where the partner's turn has to change with them,
     * that is said.
     */
    public WayOut told(Function<List<Message>, Message> telling) {
        Map<Leaves, List<Tried>> named = new EnumMap<>(Leaves.class);
        for (List<Way> row : rows) {
            row.stream()
                    .flatMap(way -> best(way).stream())
                    .min(Comparator.comparing(Tried::leaves))
                    .ifPresent(best -> named.computeIfAbsent(best.leaves(), none -> new ArrayList<>())
                            .add(best));
        }
        return named.entrySet().stream()
                .findFirst()
                .map(best -> wayOut(best.getKey(), best.getValue(), telling))
                .orElse(WayOut.NONE);
    }

    /** A change that plays, by the name of its way. */
    private record Tried(Message name, Amendment change, Leaves leaves) {}

    private WayOut wayOut(Leaves leaves, List<Tried> ways, Function<List<Message>, Message> telling) {
        return new WayOut(
                telling.apply(ways.stream().map(Tried::name).toList()),
                partnersTurn(leaves),
                ways.stream()
                        .flatMap(way -> fault.attempt().otherwise(way.change()).stream())
                        .toList());
    }

    /** The change of a way that leaves least refused, of equals the first; none if none plays. */
    private Optional<Tried> best(Way way) {
        Optional<Tried> best = Optional.empty();
        for (Amendment change : way.changes()) {
            Leaves leaves = fault.attempt().leaves(change);
            if (leaves.compareTo(best.map(Tried::leaves).orElse(Leaves.REFUSED)) < 0) {
                best = Optional.of(new Tried(way.words(), change, leaves));
            }
            if (leaves == Leaves.NOTHING) {
                return best;
            }
        }
        return best;
    }

    private Message partnersTurn(Leaves leaves) {
        boolean changes = leaves == Leaves.PARTNERS_TURN || leaves == Leaves.FAULTS_OF_BOTH;
        return changes
                ? Message.of(WaysOut.class, "partners.turn", Terms.of(fault.by().other()))
                : Message.none();
    }
}
