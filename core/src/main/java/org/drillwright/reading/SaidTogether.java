package org.drillwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.meaning.ActionText;
import org.drillwright.notation.Action;

/** Several actions of one turn in one sentence, or in several. */
final class SaidTogether {

    private SaidTogether() {}

    /** Ways to say them in their order, the most natural first; not each of them need be read as the same. Never empty. */
    static List<String> ways(List<Action> actions, Saying saying) {
        List<String> orders =
                actions.stream().map(action -> order(action, saying)).toList();
        List<String> ways = new ArrayList<>();
        if (actions.size() == 2) {
            accompanied(actions.get(0), actions.get(1), saying).ifPresent(ways::add);
            accompanied(actions.get(1), actions.get(0), saying).ifPresent(ways::add);
        }
        if (!actions.isEmpty()) {
            ways.add(Saying.sentence(String.join(saying.then() + " ", orders)));
        }
        ways.add(orders.stream().map(Saying::sentence).collect(Collectors.joining(" ")));
        return ways;
    }

    private static Optional<String> accompanied(Action order, Action with, Saying saying) {
        return saying.order(order)
                .flatMap(first -> saying.with(with).map(second -> Saying.sentence(first + " " + second)));
    }

    /** What has no words is shown as the specifications write it, not left out. */
    private static String order(Action action, Saying saying) {
        return saying.order(action).orElseGet(() -> ActionText.of(action));
    }
}
