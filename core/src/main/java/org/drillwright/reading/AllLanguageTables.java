package org.drillwright.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** The languages that are read, each made when it is first asked for: to make one takes longer than to read a drill in it. */
final class AllLanguageTables {

    private final List<String> tags = LanguageTables.lines("tongues");
    private final Map<String, LanguageTables> made = new ConcurrentHashMap<>();

    /** Their tags, without making one of them. */
    List<String> tags() {
        return tags;
    }

    /** @throws IllegalArgumentException if it is none of them */
    LanguageTables of(String tag) {
        if (!tags.contains(tag)) {
            throw new IllegalArgumentException("no language '" + tag + "'");
        }
        return made.computeIfAbsent(tag, LanguageTables::load);
    }

    /** All of them in their order, each made when the stream comes to it. */
    Stream<LanguageTables> all() {
        return tags.stream().map(this::of);
    }

    /** The same, one of them first. */
    Stream<LanguageTables> from(Optional<String> first) {
        return Stream.concat(first.stream(), tags.stream().filter(tag -> !first.equals(Optional.of(tag))))
                .map(this::of);
    }

    /** Those that somebody asked for. */
    List<String> made() {
        return tags.stream().filter(made::containsKey).toList();
    }
}
