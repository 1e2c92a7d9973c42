package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.List;

/** Numbers said in runs. */
final class Runs {

    private Runs() {}

    /** In the word for one or for several, such as {@code Rounds 1 to 4 and 7}. */
    static String named(WallText one, WallText several, List<Integer> numbers, WallTexts words) {
        return words.text(numbers.size() == 1 ? one : several, of(numbers, words));
    }

    /** Such as {@code 1 to 4, 7 and 9}. */
    static String of(List<Integer> numbers, WallTexts words) {
        List<String> runs = new ArrayList<>();
        for (int from = 0, to = 1; from < numbers.size(); from = to, to++) {
            while (to < numbers.size() && numbers.get(to) == numbers.get(to - 1) + 1) {
                to++;
            }
            int first = numbers.get(from);
            int last = numbers.get(to - 1);
            runs.add(
                    first == last
                            ? "" + first
                            : words.text(last == first + 1 ? WallText.AND : WallText.TO, first, last));
        }
        int end = runs.size() - 1;
        return end < 1
                ? String.join("", runs)
                : words.text(WallText.AND, String.join(", ", runs.subList(0, end)), runs.get(end));
    }
}
