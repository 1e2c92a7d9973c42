package org.drillwright.schema;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.wording.Bundle;
import org.drillwright.wording.Message;

/**
 * What an editor shows beside a key and offers behind it.
 *
 * @param told what a key is for, by its path ({@code steps/*}{@code /leader}; the author's own keys and the items of a list
 *     are stars)
 * @param offered texts that may be taken over, by path, each with what it stands for, which may be empty; others are as good
 * @param keys keys that may be taken over, by the path of what holds them, each with what it is for
 */
record Hints(
        Map<String, Message> told, Map<String, Map<String, Message>> offered, Map<String, Map<String, Message>> keys) {

    public Hints {
        keys = Map.copyOf(keys);
        told = Map.copyOf(told);
        offered = Map.copyOf(offered);
    }

    /**
     * What each key of a kind of file is for, by its path.
     *
     * @param kind with a full stop behind it: what the words of this room begin with
     */
    static Map<String, Message> load(String kind) {
        return Bundle.in(Hints.class, Locale.ENGLISH).keys().stream()
                .filter(key -> key.startsWith(kind))
                .collect(Collectors.toMap(key -> key.substring(kind.length()), key -> Message.of(Hints.class, key)));
    }

    public Optional<Message> tells(String path) {
        return Optional.ofNullable(told.get(path));
    }

    public Map<String, Message> keys(String path) {
        return keys.getOrDefault(path, Map.of());
    }

    public Map<String, Message> offers(String path) {
        return offered.getOrDefault(path, Map.of());
    }

    /** Texts of which nothing is told, in their order. */
    static Map<String, Message> untold(Collection<String> texts) {
        Map<String, Message> offered = new LinkedHashMap<>();
        texts.forEach(text -> offered.put(text, Message.none()));
        return offered;
    }

    /** Texts each with its title, which somebody wrote. */
    static Map<String, Message> titled(Map<String, String> titles) {
        Map<String, Message> offered = new LinkedHashMap<>();
        titles.forEach((text, title) -> offered.put(text, Message.plain(title)));
        return offered;
    }
}
