package org.drillwright.print.phone;

import java.util.ArrayList;
import java.util.List;

/** Numbers in order, those that follow each other drawn together, such as {@code 1–4, 7}. */
final class Spans {

    private Spans() {}

    static String of(List<Integer> numbers) {
        List<Integer> order = numbers.stream().sorted().distinct().toList();
        List<String> spans = new ArrayList<>();
        for (int from = 0, to = 1; from < order.size(); from = to, to++) {
            while (to < order.size() && order.get(to) == order.get(to - 1) + 1) {
                to++;
            }
            int first = order.get(from);
            int last = order.get(to - 1);
            spans.add(first == last ? "" + first : first + "–" + last);
        }
        return String.join(", ", spans);
    }
}
