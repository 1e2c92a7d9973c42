package org.drillwright.reading;

import java.util.List;
import org.drillwright.lexicon.Condition;

/**
 * One way to say a part of an action: {@code LINE[high,inside] -> the high inside line}.
 *
 * @param name of the part
 * @param asked words of the action, of which all must be there
 * @param children words, and in capitals the names of further parts
 */
record SayingRule(String name, Condition asked, List<String> children) {

    SayingRule {
        children = List.copyOf(children);
    }

    /**
     * Reads a line.
     *
     * @throws IllegalArgumentException if it is no rule, with the line
     */
    static SayingRule parse(String line) {
        int arrow = line.indexOf("->");
        if (arrow < 0) {
            throw new IllegalArgumentException("neither a rule nor a note on words: " + line);
        }
        String head = line.substring(0, arrow).strip();
        String body = line.substring(arrow + 2).strip();
        int bracket = head.indexOf('[');
        Condition asked =
                bracket < 0 ? Condition.NONE : Condition.parse(head.substring(bracket + 1, head.length() - 1));
        String name = bracket < 0 ? head : head.substring(0, bracket);
        return new SayingRule(name, asked, body.isEmpty() ? List.of() : List.of(body.split("\\s+")));
    }

    /** Whether a child is the name of a part, not a word; a word may begin with a capital. */
    static boolean isPart(String child) {
        return Character.isUpperCase(child.charAt(0)) && child.chars().noneMatch(Character::isLowerCase);
    }
}
