package org.drillwright.lexicon;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * All forms of the words of a language: a word, what may follow it, and the senses that end there. Kept in arrays of numbers, as a
 * file of them is there at once, and a sense is made when it is first asked for: a drill needs few of them.
 */
final class WordTree {

    /** Where every look-up begins. */
    static final int ROOT = 0;

    private static final int NONE = -1;

    /** All texts, one behind the other, words first. */
    private final String letters;

    private final Map<Part, int[]> parts;
    private final int[] begins;
    private final int[] hashed;
    private final int[] edges;
    private final int[] words;
    private final int[] nodes;
    private final int[] first;
    private final int[] senses;
    private final int[] entries;
    private final int[] said;
    private final int[] features;
    private final int[] pairs;
    private final int[] spelt;

    private final AtomicReferenceArray<List<LexicalEntry>> made;

    /** What the arrays hold. */
    enum Part {
        /** Where each text begins, and the last ends. */
        BEGINS,
        /** The numbers of words by the hash of their letters, each in the first free place; a power of two of places. */
        HASHED,
        /** For each node its first edge, and behind the last node the end. */
        EDGES,
        /** The word of each edge, rising for a node. */
        WORDS,
        /** The node that each edge goes to. */
        NODES,
        /** For each word the node that it goes to from the root. */
        FIRST,
        /** For each node its first sense, and behind the last node the end. */
        SENSES,
        /** The entry of each sense. */
        ENTRIES,
        /** For each entry its category, its features and its lemma. */
        SAID,
        /** For each set of features its first pair, and behind the last the end. */
        FEATURES,
        /** Names and values by turns. */
        PAIRS,
        /** Texts that are a part of some form, as it is spelt; rising. */
        SPELT
    }

    WordTree(String letters, Map<Part, int[]> parts) {
        this.letters = letters;
        this.parts = new EnumMap<>(parts);
        this.begins = part(Part.BEGINS);
        this.hashed = part(Part.HASHED);
        this.edges = part(Part.EDGES);
        this.words = part(Part.WORDS);
        this.nodes = part(Part.NODES);
        this.first = part(Part.FIRST);
        this.senses = part(Part.SENSES);
        this.entries = part(Part.ENTRIES);
        this.said = part(Part.SAID);
        this.features = part(Part.FEATURES);
        this.pairs = part(Part.PAIRS);
        this.spelt = part(Part.SPELT);
        this.made = new AtomicReferenceArray<>(edges.length - 1);
    }

    private int[] part(Part part) {
        return Objects.requireNonNull(parts.get(part));
    }

    /** The place where a word is kept, or the free one where it would be. */
    static int place(String word, int places) {
        int hash = word.hashCode() * 0x9E3779B9;
        return (hash ^ (hash >>> 16)) & (places - 1);
    }

    private int number(String word) {
        for (int at = place(word, hashed.length); hashed[at] != NONE; at = (at + 1) & (hashed.length - 1)) {
            int begin = begins[hashed[at]];
            if (begins[hashed[at] + 1] - begin == word.length() && letters.startsWith(word, begin)) {
                return hashed[at];
            }
        }
        return NONE;
    }

    private String text(int number) {
        return letters.substring(begins[number], begins[number + 1]);
    }

    /** Where a word leads to; negative if nowhere. */
    int next(int node, String word) {
        int number = number(word);
        if (number < 0) {
            return NONE;
        }
        if (node == ROOT) {
            return first[number];
        }
        for (int at = edges[node]; at < edges[node + 1]; at++) {
            if (words[at] == number) {
                return nodes[at];
            }
        }
        return NONE;
    }

    /** The senses that end at a node. */
    List<LexicalEntry> senses(int node) {
        List<LexicalEntry> known = made.get(node);
        if (known != null) {
            return known;
        }
        List<LexicalEntry> found = new ArrayList<>(senses[node + 1] - senses[node]);
        for (int at = senses[node]; at < senses[node + 1]; at++) {
            found.add(entry(entries[at]));
        }
        List<LexicalEntry> all = List.copyOf(found);
        made.set(node, all);
        return all;
    }

    /** The senses of a word alone; none if it is not listed. */
    List<LexicalEntry> sensesOf(String word) {
        int node = next(ROOT, word);
        return node < 0 ? List.of() : senses(node);
    }

    /** Whether a word alone has a sense. */
    boolean lists(String word) {
        int node = next(ROOT, word);
        return node >= 0 && senses[node] < senses[node + 1];
    }

    /** All words that have a sense alone. */
    Set<String> listed() {
        Set<String> listed = new HashSet<>();
        for (int word = 0; word < first.length; word++) {
            if (first[word] >= 0 && senses[first[word]] < senses[first[word] + 1]) {
                listed.add(text(word));
            }
        }
        return listed;
    }

    /** Whether some form is spelt with this between its blanks, hyphens and apostrophes; false of all if that was not asked. */
    boolean spells(String part) {
        int number = number(part);
        return number >= 0 && Arrays.binarySearch(spelt, number) >= 0;
    }

    /** Every entry of a category, in the order of the list. */
    List<LexicalEntry> ofCategory(String category) {
        List<LexicalEntry> found = new ArrayList<>();
        for (int entry = 0; entry < said.length / 3; entry++) {
            int begin = begins[said[entry * 3]];
            if (begins[said[entry * 3] + 1] - begin == category.length() && letters.startsWith(category, begin)) {
                found.add(entry(entry));
            }
        }
        return found;
    }

    private LexicalEntry entry(int number) {
        int category = said[number * 3];
        int set = said[number * 3 + 1];
        String[] named = new String[features[set + 1] - features[set]];
        for (int at = 0; at < named.length; at++) {
            named[at] = text(pairs[features[set] + at]);
        }
        return new LexicalEntry(text(category).intern(), Features.sorted(named), text(said[number * 3 + 2]));
    }

    /** As bytes: the length of each array and the arrays, then the letters. */
    byte[] packed() {
        byte[] text = letters.getBytes(StandardCharsets.UTF_8);
        int size = 0;
        for (int[] part : parts.values()) {
            size += part.length + 1;
        }
        ByteBuffer bytes = ByteBuffer.allocate(size * Integer.BYTES + text.length);
        for (int[] part : parts.values()) {
            bytes.putInt(part.length);
            bytes.asIntBuffer().put(part);
            bytes.position(bytes.position() + part.length * Integer.BYTES);
        }
        return bytes.put(text).array();
    }

    /** Of what {@link #packed} gave. */
    static WordTree unpacked(ByteBuffer bytes) {
        Map<Part, int[]> parts = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            int[] numbers = new int[bytes.getInt()];
            bytes.asIntBuffer().get(numbers);
            bytes.position(bytes.position() + numbers.length * Integer.BYTES);
            parts.put(part, numbers);
        }
        return new WordTree(StandardCharsets.UTF_8.decode(bytes).toString(), parts);
    }
}
