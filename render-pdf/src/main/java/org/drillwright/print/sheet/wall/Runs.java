package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.List;

/** Numbers said in runs. */
final class Runs {

    private Runs() {}

    /** Such as {@code Rounds 1 to 4 and 7}. */
    static String named(String one, List<Integer> numbers) {
        return one + (numbers.size() == 1 ? " " : "s ") + of(numbers);
    }

    /** Such as {@code 1 to 4, 7 and 9}. */
    static String of(List<Integer> numbers) {
        List<String> runs = new ArrayList<>();
        for (int from = 0, to = 1; from < numbers.size(); from = to, to++) {
            while (to < numbers.size() && numbers.get(to) == numbers.get(to - 1) + 1) {
                to++;
            }
            int first = numbers.get(from);
            int last = numbers.get(to - 1);
            runs.add(first == last ? "" + first : first + (last == first + 1 ? " and " : " to ") + last);
        }
        int end = runs.size() - 1;
        return end < 1 ? String.join("", runs) : String.join(", ", runs.subList(0, end)) + " and " + runs.get(end);
    }
}
