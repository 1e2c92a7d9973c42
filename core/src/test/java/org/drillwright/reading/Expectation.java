package org.drillwright.reading;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.meaning.ActionText;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Utterance;

/**
 * A sentence with what it means, written by hand before any reader saw it.
 *
 * @param group the construction or style under which it stands
 * @param alternatives readings that play the same, each as its actions in their short form
 * @param unread words that cannot be said by actions, or that nobody knows; empty if there are none
 */
record Expectation(String group, String sentence, List<List<String>> alternatives, String unread) {

    /** What became of a sentence. */
    enum Outcome {
        /** The same actions in their order and no word unread; that a condition leaves them open is no difference. */
        MEANT,
        /** Not as meant, and the reader says that it did not understand all. */
        UNREAD,
        /** Not as meant, and nobody is told. */
        MISREAD
    }

    /** The rows of a file below the test resources: sentence, language perhaps, actions, unread words, parted by tabs. */
    static List<Expectation> of(String file) {
        List<Expectation> rows = new ArrayList<>();
        String group = "";
        try {
            for (String line : Files.readAllLines(Path.of("src/test/resources/reading", file))) {
                if (line.startsWith("#")) {
                    group = line.substring(1).strip();
                } else if (!line.isBlank()) {
                    rows.add(row(group, line.split("\t", -1)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    /** A sentence with what it means, whole alternatives parted by {@code |}. */
    static Expectation of(String group, String sentence, String actions) {
        return row(group, new String[] {sentence, actions});
    }

    private static Expectation row(String group, String[] columns) {
        int at = columns[1].matches("[a-z]{2}") ? 2 : 1;
        List<List<String>> alternatives = Arrays.stream(columns[at].split(" \\| "))
                .map(Expectation::actions)
                .toList();
        return new Expectation(group, columns[0], alternatives, columns.length > at + 1 ? columns[at + 1].strip() : "");
    }

    private static List<String> actions(String text) {
        return joined(Arrays.stream(text.split(";"))
                .map(Expectation::plain)
                .filter(action -> !action.isEmpty())
                .toList());
    }

    /** What is told of another is read both ways; whose deed it is, the drill around the sentence tells (ToldOfBothTest). */
    Outcome outcome(Utterance read) {
        Outcome first = outcomeOf(read);
        return first == Outcome.MISREAD && read.ofOneself().map(this::outcomeOf).equals(Optional.of(Outcome.MEANT))
                ? Outcome.MEANT
                : first;
    }

    private Outcome outcomeOf(Utterance read) {
        List<String> said = joined(read.clauses().stream()
                .map(Clause::action)
                .filter(action -> !(action instanceof Action.Aside || action instanceof Action.Unread))
                .map(action -> plain(ActionText.of(action)))
                .toList());
        boolean everyWord = read.unread().isEmpty()
                && read.clauses().stream().noneMatch(clause -> clause.action() instanceof Action.Unread);
        if (alternatives.contains(said) && (everyWord || !unread.isEmpty())) {
            return Outcome.MEANT;
        }
        return read.isRead() ? Outcome.MISREAD : Outcome.UNREAD;
    }

    /**
     * An action with what is no difference left out: that a stroke is direct or opposed, on which line it stays, whether
     * the hand is placed, held or comes on guard in a position (play tells), which cheek, and where a target is taken (EvasionsTest).
     * Who waits holds: nothing in the phrase plays the one otherwise than the other. To stand is another thing.
     */
    private static String plain(String action) {
        String told = action.strip().replaceFirst("^(leader|follower|attacker|defender): ?", "");
        if (told.isEmpty() || told.equals("-")) {
            return "";
        }
        List<String> words = new ArrayList<>(List.of(told.replace("inside-cheek", "cheek")
                .replace("outside-cheek", "cheek")
                .split("\\s+")));
        String first = words.remove(0);
        String head = first.equals("wait") ? "hold" : first;
        words.removeIf(word -> head.equals("strike") && word.equals("direct"));
        words.removeIf(word -> head.equals("evade"));
        words.removeAll(List.of("opposition", "same-line", "lunged", "unless-lunged"));
        boolean placed = Set.of("place", "guard", "hold").contains(head) && !words.isEmpty();
        if (head.equals("step") && words.size() == 1) {
            words.add("1");
        }
        Collections.sort(words);
        return String.join(" ", (placed ? "guard" : head), String.join(" ", words))
                .strip();
    }

    /** A stance or a measure told behind a guard belongs to it. */
    private static List<String> joined(List<String> actions) {
        List<String> all = new ArrayList<>();
        for (String action : actions) {
            boolean belongs = action.startsWith("state ")
                    && !all.isEmpty()
                    && all.get(all.size() - 1).matches("(guard|state|recover|hold)( .*)?");
            if (belongs) {
                String before = all.remove(all.size() - 1);
                all.add(plain(before + action.substring("state".length())));
            } else {
                all.add(action);
            }
        }
        return all;
    }
}
