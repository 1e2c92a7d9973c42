package org.drillwright.grammar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.drillwright.lexicon.Condition;
import org.drillwright.lexicon.Features;

/**
 * A construction: {@code PARENT -> CHILD[condition] 'word- , => feature=value @weight}.
 *
 * @param result what the whole says besides what its parts say
 * @param weight what it costs; 1 if not said
 * @param line as it is written
 */
record Rule(String parent, List<Child> children, Features result, double weight, String line) {

    /** What of a part goes up to the whole. */
    enum Up {
        /** What it says and means. */
        ALL,
        /** What it means. */
        MEANING,
        /** It becomes an argument of the whole. */
        ARGUMENT,
        NOTHING
    }

    /**
     * A part of a construction.
     *
     * @param category a category, or a word or sign that stands there literally
     * @param up what of it goes up to the whole
     * @param relation how it hangs on the whole, if it is an argument; otherwise empty
     */
    record Child(String category, Condition condition, Up up, String relation) {}

    Rule {
        children = List.copyOf(children);
    }

    /** @throws IllegalArgumentException if the line is no rule */
    static Rule parse(String line) {
        List<String> words = new ArrayList<>(Arrays.asList(line.strip().split("\\s+")));
        double weight = 1;
        if (words.get(words.size() - 1).startsWith("@")) {
            weight = Double.parseDouble(words.remove(words.size() - 1).substring(1));
        }
        int arrow = words.indexOf("=>");
        List<String> parts = words.subList(2, arrow < 0 ? words.size() : arrow);
        if (!words.get(1).equals("->") || parts.isEmpty()) {
            throw new IllegalArgumentException("no rule: " + line);
        }
        Features result = arrow < 0 ? Features.NONE : Features.parse(words.subList(arrow + 1, words.size()));
        return new Rule(words.get(0), parts.stream().map(Rule::child).toList(), result, weight, line.strip());
    }

    private static Child child(String word) {
        String rest = word;
        String relation = "";
        Up up = Up.ALL;
        int sign = word.startsWith("<") ? -1 : word.lastIndexOf('>');
        if (sign > 0) {
            up = Up.ARGUMENT;
            relation = word.substring(sign + 1);
            rest = word.substring(0, sign);
        } else if (word.length() > 1 && (word.endsWith("-") || word.endsWith("+"))) {
            up = word.endsWith("-") ? Up.NOTHING : Up.MEANING;
            rest = word.substring(0, word.length() - 1);
        }
        int bracket = rest.indexOf('[');
        if (bracket < 0) {
            return new Child(rest, Condition.NONE, isLiteral(rest) ? Up.NOTHING : up, relation);
        }
        if (!rest.endsWith("]")) {
            throw new IllegalArgumentException("bracket left open: " + word);
        }
        return new Child(
                rest.substring(0, bracket),
                Condition.parse(rest.substring(bracket + 1, rest.length() - 1)),
                up,
                relation);
    }

    static boolean isLiteral(String category) {
        return !Character.isUpperCase(category.charAt(0));
    }
}
