package org.drillwright.formatter;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/** The remarks of a file by what they belong to: a key with its value, an item, a list or a group of keys. */
final class Remarks {

    private final List<String> header = new ArrayList<>();
    private final IdentityHashMap<Object, List<String>> above = new IdentityHashMap<>();
    private final IdentityHashMap<Object, String> beside = new IdentityHashMap<>();
    private final IdentityHashMap<Object, List<String>> below = new IdentityHashMap<>();

    /** Lines at the head of the file that belong to no key; an empty one parts two groups. */
    List<String> header() {
        return header;
    }

    List<String> above(Object owner) {
        return above.getOrDefault(owner, List.of());
    }

    Optional<String> beside(Object owner) {
        return Optional.ofNullable(beside.get(owner));
    }

    /** Lines at the end of a list or a group, further in than what follows. */
    List<String> below(Object owner) {
        return below.getOrDefault(owner, List.of());
    }

    boolean any(Object owner) {
        return above.containsKey(owner) || beside.containsKey(owner) || below.containsKey(owner);
    }

    void addToHeader(Remark remark) {
        add(remark, header);
    }

    void addAbove(Object owner, Remark remark) {
        add(remark, above.computeIfAbsent(owner, one -> new ArrayList<>()));
    }

    void addBelow(Object owner, Remark remark) {
        add(remark, below.computeIfAbsent(owner, one -> new ArrayList<>()));
    }

    /** A second remark beside the same value goes above it. */
    void addBeside(Object owner, Remark remark) {
        if (beside.containsKey(owner)) {
            addAbove(owner, remark);
        } else {
            beside.put(owner, remark.text());
        }
    }

    private static void add(Remark remark, List<String> lines) {
        if (remark.afterGap() && !lines.isEmpty()) {
            lines.add("");
        }
        lines.add(remark.text());
    }

    /**
     * One remark.
     *
     * @param text from its sign on, without blanks at its end
     * @param column in which its sign stands, from 0
     * @param alone whether nothing but blanks stands before it in its line
     * @param afterGap whether the line before it is empty
     */
    record Remark(String text, int column, boolean alone, boolean afterGap) {}
}
