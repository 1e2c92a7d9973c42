package org.drillwright.check.safety;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.wording.DataLines;
import org.drillwright.wording.Plain;

/** A drill's gear, item by item, as pieces. */
final class GearList {

    private static final Map<String, List<String>> WORDS = load();

    /** Each with blanks around it, and two between its words, as {@link #strangeWords} holds them against an item. */
    private static final List<String> LONGEST_FIRST = WORDS.entrySet().stream()
            .filter(entry -> !entry.getKey().equals("none"))
            .flatMap(entry -> entry.getValue().stream())
            .sorted(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()))
            .map(word -> " " + word.replace(" ", "  ") + " ")
            .toList();

    /** Each of them with what it says. */
    private static final Map<String, Set<String>> SAYING = saying();

    private static final int MOST_WORDS = SAYING.keySet().stream()
            .mapToInt(word -> word.split(" ").length)
            .max()
            .orElse(0);

    private static final Pattern NUMBER = Pattern.compile("\\d+n?");

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");

    private final List<Item> items;

    /**
     * What is known of an item.
     *
     * @param says what of the words that are known here it says
     * @param strange words that are neither of a piece nor harmless
     */
    private record Item(String written, Set<String> says, List<String> strange) {

        /** Whether it is the piece, but for words that could make it anything else. */
        boolean is(GearPiece piece) {
            return !says.contains("none") && speaksOf(piece);
        }

        /** Whether it speaks of such a piece at all, be it of another kind or to say that it is not worn. */
        boolean speaksOf(GearPiece piece) {
            return switch (piece) {
                case MASK -> says.contains("mask");
                case JACKET -> says.contains("jacket") && !says.contains("underarm protector");
                case UNDERARM_PROTECTOR -> says.contains("underarm protector");
                case GLOVE -> says.contains("glove");
            };
        }
    }

    /**
     * A list of gear.
     *
     * @param own the school's own words, each with words that say the same
     */
    GearList(List<String> items, Map<String, String> own) {
        Map<String, String> plain = new HashMap<>();
        own.forEach((say, means) -> plain.put(plain(say), plain(means)));
        this.items = items.stream()
                .map(item -> {
                    String folded = fold(item, plain);
                    return new Item(item, said(folded), strangeWords(folded));
                })
                .toList();
    }

    /**
     * An item that speaks of a piece in words that nobody here knows.
     *
     * @param item as it is written
     * @param words those that were not understood
     */
    record Unclear(String item, List<String> words) {

        Unclear {
            words = List.copyOf(words);
        }
    }

    /** Whether one item is the piece, and holds no word that could make it anything else. */
    boolean has(GearPiece piece) {
        return items.stream().anyMatch(item -> item.is(piece) && item.strange().isEmpty());
    }

    /** Items that may be the piece, but for words that are not understood; one that says 'no mask' is none. */
    List<Unclear> unclear(GearPiece piece) {
        return items.stream()
                .filter(item -> item.is(piece) && !item.strange().isEmpty())
                .map(item -> new Unclear(item.written(), item.strange()))
                .toList();
    }

    /** The words of an item that are neither of a piece nor harmless. */
    private static List<String> strangeWords(String item) {
        if (SAYING.containsKey(item) && !SAYING.get(item).equals(Set.of("none"))) {
            return List.of();
        }
        String rest = " " + item.replace(" ", "  ") + " ";
        for (String word : LONGEST_FIRST) {
            rest = rest.replace(word, " ");
        }
        return Stream.of(rest.strip().split(" +"))
                .filter(word -> !word.isEmpty() && !NUMBER.matcher(word).matches())
                .toList();
    }

    /** Whether an item speaks of such a piece at all, be it of another kind or to say that it is not worn. */
    boolean speaksOf(GearPiece piece) {
        return items.stream().anyMatch(item -> item.speaksOf(piece));
    }

    private static Set<String> said(String item) {
        List<String> words = List.of(item.split(" "));
        Set<String> said = new HashSet<>();
        for (int from = 0; from < words.size(); from++) {
            for (int to = from + 1; to <= Math.min(from + MOST_WORDS, words.size()); to++) {
                said.addAll(SAYING.getOrDefault(String.join(" ", words.subList(from, to)), Set.of()));
            }
        }
        return said;
    }

    /** An item for comparison, the school's own words put as what they mean. */
    private static String fold(String item, Map<String, String> own) {
        String folded = " " + plain(item) + " ";
        for (Map.Entry<String, String> word : own.entrySet()) {
            folded = folded.replace(" " + word.getKey() + " ", " " + word.getValue() + " ");
        }
        return folded.strip();
    }

    private static String plain(String item) {
        return BETWEEN_WORDS.matcher(Plain.fold(item)).replaceAll(" ").strip();
    }

    private static Map<String, Set<String>> saying() {
        Map<String, Set<String>> saying = new HashMap<>();
        WORDS.forEach((what, words) -> words.forEach(
                word -> saying.computeIfAbsent(word, one -> new HashSet<>()).add(what)));
        return saying;
    }

    private static Map<String, List<String>> load() {
        Map<String, List<String>> words = new HashMap<>();
        DataLines.of(GearList.class, "/org/drillwright/check/gear.words").forEach(line -> {
            String[] parts = line.split(": ", 2);
            words.put(parts[0], List.of(parts[1].split(", ")));
        });
        return words;
    }
}
