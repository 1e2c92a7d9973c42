package org.drillwright.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillwright.wording.Message;

/** Finds the known word that a mistyped one was probably meant to be. */
public final class Nearest {

    /** Characters of the longest word that is compared; a longer one is no slip of the hand. */
    public static final int LONGEST = 200;

    private static final int SHORT = 4;
    private static final int MIDDLING = 7;

    private Nearest() {}

    /** That a word is not known where it stands. */
    public static Message unknown(String word) {
        return Message.of(Nearest.class, "unknown.here", word);
    }

    /** Asks whether another word was meant. */
    public static Message meant(String word) {
        return Message.of(Nearest.class, "did.you.mean", word);
    }

    /** The word that is asked about in a message, as {@link #meant(String)} asks; none if none is. */
    public static Optional<String> askedIn(Message message) {
        return message.parts()
                .filter(Message.Worded.class::isInstance)
                .map(Message.Worded.class::cast)
                .filter(said -> said.room() == Nearest.class && said.key().equals("did.you.mean"))
                .map(said -> String.valueOf(said.values().get(0)))
                .findFirst();
    }

    /** Asks for the nearest of the known words, if one is near enough. */
    public static Optional<Message> meant(String word, Collection<String> known) {
        return to(word, known).map(Nearest::meant);
    }

    /**
     * The nearest of the known words, if it is near enough: a third of the letters may differ (insertions, deletions,
     * changes and swaps of neighbours each count as one). Of equally near ones the first in the alphabet; none for a word
     * of more than {@value #LONGEST} characters.
     */
    public static Optional<String> to(String word, Collection<String> known) {
        return all(word, known).stream().findFirst();
    }

    /** All known words that are near enough, the nearest first. */
    public static List<String> all(String word, Collection<String> known) {
        if (word.length() > LONGEST) {
            return List.of();
        }
        return known.stream()
                .filter(candidate -> isNear(word, candidate))
                .sorted(Comparator.<String>comparingInt(candidate -> distance(word, candidate))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    /**
     * The known word of which another is a slip of the hand. In a word of up to four letters two neighbours may have changed
     * places, in one of up to seven one letter may differ, in a longer one two. None for a word that is known itself: nobody
     * who wrote it meant another.
     */
    public static Optional<String> slip(String word, Collection<String> known) {
        if (known.contains(word)) {
            return Optional.empty();
        }
        return to(
                word,
                known.stream().filter(candidate -> isSlip(word, candidate)).toList());
    }

    /**
     * All known words of which another is a slip of the hand, the nearest first; hands seldom slip on a first letter, nor by
     * an ending more: 'raised' is no slip of 'raise'.
     */
    public static List<String> slips(String word, Collection<String> known) {
        if (word.isEmpty() || word.length() > LONGEST) {
            return List.of();
        }
        return all(
                word,
                known.stream()
                        .filter(candidate ->
                                beginsAlike(word, candidate) && !word.startsWith(candidate) && isSlip(word, candidate))
                        .toList());
    }

    private static boolean beginsAlike(String word, String candidate) {
        boolean swapped = word.length() > 1
                && candidate.length() > 1
                && word.charAt(0) == candidate.charAt(1)
                && word.charAt(1) == candidate.charAt(0);
        return swapped || word.charAt(0) == candidate.charAt(0);
    }

    private static boolean isSlip(String word, String candidate) {
        int shorter = Math.min(word.length(), candidate.length());
        if (shorter <= SHORT) {
            return word.length() == candidate.length()
                    && letters(word).equals(letters(candidate))
                    && distance(word, candidate) == 1;
        }
        int allowed = shorter <= MIDDLING ? 1 : 2;
        return Math.abs(word.length() - candidate.length()) <= allowed && distance(word, candidate) <= allowed;
    }

    private static String letters(String word) {
        return word.codePoints()
                .sorted()
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** The lengths are compared first: two words differ in at least as many letters as one has more than the other. */
    private static boolean isNear(String word, String candidate) {
        int allowed = allowance(word, candidate);
        return Math.abs(word.length() - candidate.length()) <= allowed && distance(word, candidate) <= allowed;
    }

    private static int allowance(String word, String candidate) {
        return Math.max(1, Math.max(word.length(), candidate.length()) / 3);
    }

    /** The optimal string alignment distance. */
    static int distance(String one, String other) {
        int[][] cost = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                cost[i][j] = cheapest(one, other, cost, i, j);
            }
        }
        return cost[one.length()][other.length()];
    }

    private static int cheapest(String one, String other, int[][] cost, int i, int j) {
        if (i == 0 || j == 0) {
            return i + j;
        }
        int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        int best = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + change);
        boolean swapped =
                i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1);
        return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
    }
}
