package org.drillwright.reading;

import java.util.ArrayList;
import java.util.List;
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
        if (actions.isEmpty()) {
            return List.of("");
        }
        ways.add(flowing(actions, orders, saying));
        if (actions.size() == 2) {
            saying.with(actions.get(0)).ifPresent(with -> ways.add(Saying.sentence(beside(orders.get(1), with))));
        }
        if (actions.stream().noneMatch(Action.State.class::isInstance)) {
            ways.add(Saying.sentence(String.join(saying.then() + " ", orders)));
        }
        ways.add(orders.stream().map(Saying::sentence).collect(Collectors.joining(" ")));
        return ways;
    }

    /** Each action hangs on the one before it, if it can be said so. */
    private static String flowing(List<Action> actions, List<String> orders, Saying saying) {
        String all = orders.get(0);
        for (int at = 1; at < orders.size(); at++) {
            String order = saying.then() + " " + orders.get(at);
            all = beside(all, saying.with(actions.get(at)).orElse(order));
        }
        return Saying.sentence(all);
    }

    private static String beside(String words, String more) {
        return words + (more.startsWith(",") ? "" : " ") + more;
    }

    /** What has no words is shown as the specifications write it, not left out. */
    private static String order(Action action, Saying saying) {
        return saying.order(action).orElseGet(() -> ActionText.of(action));
    }
}
