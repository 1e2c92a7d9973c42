package org.drillwright.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.drillwright.lexicon.Condition;
import org.drillwright.lexicon.Features;
import org.drillwright.lexicon.TableLines;

/** A construction: {@code PARENT -> CHILD[condition] 'word- , => feature=value @weight}. */
final class Production {

    private final String parent;
    private final Child[] children;
    private final Features result;
    private final double weight;
    private final String line;

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
     * @param number of the category
     * @param up what of it goes up to the whole
     * @param relation how it hangs on the whole, if it is an argument; otherwise empty
     */
    record Child(String category, int number, Condition condition, Up up, String relation) {}

    private Production(String parent, List<Child> children, Features result, double weight, String line) {
        this.parent = parent;
        this.children = children.toArray(Child[]::new);
        this.result = result;
        this.weight = weight;
        this.line = line;
    }

    String parent() {
        return parent;
    }

    List<Child> children() {
        return List.of(children);
    }

    /** How many parts it has, 1 or more. */
    int size() {
        return children.length;
    }

    Child child(int at) {
        return children[at];
    }

    /** What the whole says besides what its parts say. */
    Features result() {
        return result;
    }

    /** What it costs; 1 if not said. */
    double weight() {
        return weight;
    }

    /** As it is written. */
    String line() {
        return line;
    }

    /**
     * Reads a line.
     *
     * @param parts what a part that is written so is
     * @throws IllegalArgumentException if the line is no rule
     */
    static Production parse(String line, Function<String, Child> parts) {
        List<String> words = TableLines.words(line);
        double weight = 1;
        if (words.get(words.size() - 1).startsWith("@")) {
            weight = Double.parseDouble(words.remove(words.size() - 1).substring(1));
        }
        int arrow = words.indexOf("=>");
        List<String> written = words.subList(2, arrow < 0 ? words.size() : arrow);
        if (!words.get(1).equals("->") || written.isEmpty()) {
            throw new IllegalArgumentException("no rule: " + line);
        }
        Features result = arrow < 0 ? Features.NONE : Features.parse(words.subList(arrow + 1, words.size()));
        List<Child> children = new ArrayList<>(written.size());
        for (String part : written) {
            children.add(parts.apply(part));
        }
        return new Production(words.get(0).intern(), children, result, weight, line.strip());
    }

    /** @throws IllegalArgumentException if a part cannot be written so */
    static Child child(String word, Categories categories) {
        String rest = word;
        String relation = "";
        Up up = Up.ALL;
        int sign = word.lastIndexOf('>');
        if (sign > 0 && !isLiteral(word)) {
            up = Up.ARGUMENT;
            relation = word.substring(sign + 1);
            rest = word.substring(0, sign);
        } else if (word.length() > 1 && (word.endsWith("-") || word.endsWith("+"))) {
            up = word.endsWith("-") ? Up.NOTHING : Up.MEANING;
            rest = word.substring(0, word.length() - 1);
        }
        int bracket = rest.indexOf('[');
        if (bracket >= 0 && !rest.endsWith("]")) {
            throw new IllegalArgumentException("bracket left open: " + word);
        }
        String category = (bracket < 0 ? rest : rest.substring(0, bracket)).intern();
        Condition condition =
                bracket < 0 ? Condition.NONE : Condition.parse(rest.substring(bracket + 1, rest.length() - 1));
        Up goes = bracket < 0 && isLiteral(category) ? Up.NOTHING : up;
        return new Child(category, categories.number(category), condition, goes, relation);
    }

    static boolean isLiteral(String category) {
        return !Character.isUpperCase(category.charAt(0));
    }
}
