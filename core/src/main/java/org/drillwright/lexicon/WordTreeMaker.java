package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Makes the tree of a language's words. */
final class WordTreeMaker {

    private final List<Node> nodes = new ArrayList<>(List.of(new Node()));
    private final Map<String, Integer> texts = new LinkedHashMap<>();
    private final Map<LexicalEntry, Integer> entries = new LinkedHashMap<>();
    private final Map<Features, Integer> features = new LinkedHashMap<>();

    private static final class Node {
        private final Map<Integer, Integer> next = new TreeMap<>();
        private final Set<Integer> here = new LinkedHashSet<>();
    }

    /** Adds a form. */
    void add(List<String> words, LexicalEntry entry) {
        int at = WordTree.ROOT;
        for (String word : words) {
            Integer known = nodes.get(at).next.get(text(word));
            if (known == null) {
                known = nodes.size();
                nodes.get(at).next.put(text(word), known);
                nodes.add(new Node());
            }
            at = known;
        }
        Integer number = entries.computeIfAbsent(entry, key -> entries.size());
        nodes.get(at).here.add(number);
    }

    private int text(String text) {
        return texts.computeIfAbsent(text, key -> texts.size());
    }

    /** @param spelt parts of forms as they are spelt */
    WordTree made(Collection<String> spelt) {
        int[] numbers = spelt.stream().mapToInt(this::text).sorted().toArray();
        List<String> words = List.copyOf(texts.keySet());
        Numbers said = new Numbers();
        for (LexicalEntry entry : entries.keySet()) {
            said.add(text(entry.category()));
            said.add(features.computeIfAbsent(entry.features(), key -> features.size()));
            said.add(text(entry.lemma()));
        }
        Numbers behind = new Numbers();
        Numbers pairs = new Numbers();
        for (Features one : features.keySet()) {
            behind.add(pairs.size());
            one.names().forEach(name -> {
                pairs.add(text(name));
                pairs.add(text(one.get(name).orElseThrow()));
            });
        }
        behind.add(pairs.size());
        Numbers edges = new Numbers();
        Numbers over = new Numbers();
        Numbers to = new Numbers();
        Numbers senses = new Numbers();
        Numbers meant = new Numbers();
        for (Node node : nodes) {
            edges.add(over.size());
            senses.add(meant.size());
            node.next.forEach((word, next) -> {
                over.add(word);
                to.add(next);
            });
            node.here.forEach(meant::add);
        }
        edges.add(over.size());
        senses.add(meant.size());
        int[] first = new int[words.size()];
        Arrays.fill(first, -1);
        nodes.get(WordTree.ROOT).next.forEach((word, next) -> first[word] = next);
        Map<WordTree.Part, int[]> parts = new EnumMap<>(WordTree.Part.class);
        parts.put(WordTree.Part.BEGINS, begins());
        parts.put(WordTree.Part.HASHED, hashed(words));
        parts.put(WordTree.Part.EDGES, edges.toArray());
        parts.put(WordTree.Part.WORDS, over.toArray());
        parts.put(WordTree.Part.NODES, to.toArray());
        parts.put(WordTree.Part.FIRST, first);
        parts.put(WordTree.Part.SENSES, senses.toArray());
        parts.put(WordTree.Part.ENTRIES, meant.toArray());
        parts.put(WordTree.Part.SAID, said.toArray());
        parts.put(WordTree.Part.FEATURES, behind.toArray());
        parts.put(WordTree.Part.PAIRS, pairs.toArray());
        parts.put(WordTree.Part.SPELT, numbers);
        return new WordTree(String.join("", texts.keySet()), parts);
    }

    private int[] begins() {
        Numbers begins = new Numbers();
        int at = 0;
        for (String text : texts.keySet()) {
            begins.add(at);
            at += text.length();
        }
        begins.add(at);
        return begins.toArray();
    }

    /** At most half of the places are taken. */
    private static int[] hashed(List<String> words) {
        int[] places = new int[Integer.highestOneBit(Math.max(1, words.size())) * 4];
        Arrays.fill(places, -1);
        for (int word = 0; word < words.size(); word++) {
            int at = WordTree.place(words.get(word), places.length);
            while (places[at] >= 0) {
                at = (at + 1) & (places.length - 1);
            }
            places[at] = word;
        }
        return places;
    }

    /** Numbers one behind the other. */
    private static final class Numbers {
        private int[] all = new int[64];
        private int size;

        void add(int number) {
            if (size == all.length) {
                all = Arrays.copyOf(all, size * 2);
            }
            all[size++] = number;
        }

        int size() {
            return size;
        }

        int[] toArray() {
            return Arrays.copyOf(all, size);
        }
    }
}
