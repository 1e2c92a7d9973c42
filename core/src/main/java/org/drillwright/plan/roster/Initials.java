package org.drillwright.plan.roster;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Initials of people, each the only ones of their kind and none of them a whole name unless the roster has initials
 * already: MO, told apart as MOl and MOr, or as MaO and MiO where the surname is the same, and by a number where nothing
 * else helps. They don't depend on the order of the names.
 */
final class Initials {

    /** Letters of one word; with more it would be told rather than hinted at. */
    private static final int MOST = 3;

    /** Words parted by spaces, hyphens or points; an apostrophe parts nothing (O'Hara). */
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}'\u2019\u200c\u200d]*");

    /** A letter with the marks that sit on it, as people count letters. */
    private static final Pattern LETTER = Pattern.compile("\\X");

    private Initials() {}

    /** What to show for each name. */
    static Map<String, String> of(Collection<String> names) {
        Map<String, Abridged> all = new TreeMap<>();
        names.forEach(name -> all.put(name, Abridged.of(name)));
        Map<String, String> shown = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>();
        List<List<Map.Entry<String, Abridged>>> alike = new ArrayList<>();
        for (List<Map.Entry<String, Abridged>> group : apart(List.copyOf(all.entrySet()))) {
            if (group.size() == 1 && taken.add(group.get(0).getValue().shown())) {
                shown.put(group.get(0).getKey(), group.get(0).getValue().shown());
            } else {
                alike.add(group);
            }
        }
        for (List<Map.Entry<String, Abridged>> group : alike) {
            int number = 1;
            for (Map.Entry<String, Abridged> one : group) {
                while (!taken.add(one.getValue().shown() + number)) {
                    number++;
                }
                shown.put(one.getKey(), one.getValue().shown() + number);
            }
        }
        return shown;
    }

    /** Groups of names that look the same, however many letters are shown. */
    private static List<List<Map.Entry<String, Abridged>>> apart(List<Map.Entry<String, Abridged>> names) {
        List<List<Map.Entry<String, Abridged>>> found = new ArrayList<>();
        for (List<Map.Entry<String, Abridged>> group : alike(names, Function.identity())) {
            (group.size() == 1 ? Stream.<Way>empty() : ways(group))
                    .filter(way -> parts(group, way))
                    .reduce((one, other) -> alike(group, other::in).size()
                                    > alike(group, one::in).size()
                            ? other
                            : one)
                    .ifPresentOrElse(
                            way -> found.addAll(apart(group.stream()
                                    .map(one -> Map.entry(one.getKey(), way.in(one.getValue())))
                                    .toList())),
                            () -> found.add(group));
        }
        return found;
    }

    /** Whether a way tells some of a group apart, and shows nobody as the whole name of another: Bo is not Bob. */
    private static boolean parts(List<Map.Entry<String, Abridged>> group, Way way) {
        Set<String> whole = group.stream()
                .map(Map.Entry::getValue)
                .filter(name -> way.in(name).equals(name))
                .map(name -> name.showing(
                                way.word(name), name.words().get(way.word(name)).size())
                        .shown())
                .collect(Collectors.toSet());
        return alike(group, way::in).size() > 1
                && group.stream()
                        .map(Map.Entry::getValue)
                        .filter(name -> !way.in(name).equals(name))
                        .noneMatch(name -> whole.contains(way.in(name).shown()));
    }

    private static Collection<List<Map.Entry<String, Abridged>>> alike(
            List<Map.Entry<String, Abridged>> names, Function<Abridged, Abridged> way) {
        return names.stream()
                .collect(Collectors.groupingBy(
                        one -> way.apply(one.getValue()).shown(), LinkedHashMap::new, Collectors.toList()))
                .values();
    }

    /** How more can be shown, the least first; of those that tell the most apart the first is taken: of the last word, of the first, of one in between. */
    private static Stream<Way> ways(List<Map.Entry<String, Abridged>> group) {
        int words = group.stream()
                .mapToInt(one -> one.getValue().words().size())
                .min()
                .orElse(0);
        return IntStream.rangeClosed(2, MOST)
                .boxed()
                .flatMap(letters -> IntStream.range(-1, words - 1).mapToObj(word -> new Way(word, letters)));
    }

    /**
     * More letters of a word, but never all of it.
     *
     * @param at the word's place, from 0; -1 for the last
     */
    private record Way(int at, int letters) {

        int word(Abridged name) {
            return at < 0 ? name.words().size() - 1 : at;
        }

        Abridged in(Abridged name) {
            return letters < name.words().get(word(name)).size() ? name.showing(word(name), letters) : name;
        }
    }

    /**
     * A name's words, and how many letters of each are shown.
     *
     * @param words each as its letters
     */
    private record Abridged(String name, List<List<String>> words, List<Integer> letters) {

        static Abridged of(String name) {
            List<List<String>> words = WORD.matcher(name)
                    .results()
                    .map(MatchResult::group)
                    .map(Abridged::letters)
                    .toList();
            if (words.size() == 1 && isInitials(words.get(0))) {
                words = words.get(0).stream().map(List::of).toList();
            }
            return new Abridged(name, words, words.stream().map(word -> 1).toList());
        }

        private static List<String> letters(String word) {
            return LETTER.matcher(word).results().map(MatchResult::group).toList();
        }

        /** The roster has initials already. */
        private static boolean isInitials(List<String> word) {
            return word.size() <= MOST
                    && word.stream().allMatch(letter -> Character.isUpperCase(letter.codePointAt(0)));
        }

        Abridged showing(int word, int wanted) {
            Integer[] more = letters.toArray(Integer[]::new);
            more[word] = Math.max(more[word], wanted);
            return new Abridged(name, words, Arrays.asList(more));
        }

        String shown() {
            StringBuilder shown = new StringBuilder();
            for (int at = 0; at < words.size(); at++) {
                String part = String.join("", words.get(at).subList(0, letters.get(at)));
                shown.append(part).append(words.size() > 1 && !hasCase(part) ? "." : "");
            }
            return shown.isEmpty() ? name : shown.toString();
        }

        /** Where no capital tells that a word begins, and letters may join, a point stands between. */
        private static boolean hasCase(String part) {
            int first = part.codePointAt(0);
            return !Character.isLetter(first) || Character.toUpperCase(first) != Character.toLowerCase(first);
        }
    }
}
