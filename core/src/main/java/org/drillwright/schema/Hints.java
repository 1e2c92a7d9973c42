package org.drillwright.schema;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What an editor shows beside a key and offers behind it.
 *
 * @param told what a key is for, by its path ({@code steps/*}{@code /leader}; the author's own keys and the items of a list
 *     are stars)
 * @param offered texts that may be taken over, by path, each with what it stands for, which may be empty; others are as good
 * @param keys keys that may be taken over, by the path of what holds them, each with what it is for
 */
public record Hints(
        Map<String, String> told, Map<String, Map<String, String>> offered, Map<String, Map<String, String>> keys) {

    public Hints {
        keys = Map.copyOf(keys);
        told = Map.copyOf(told);
        offered = Map.copyOf(offered);
    }

    /** The descriptions that lie beside this class. */
    static Map<String, String> load(String name) {
        try (InputStream in = Hints.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("no " + name);
            }
            Map<String, String> told = new LinkedHashMap<>();
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(line ->
                            told.put(line.substring(0, line.indexOf(": ")), line.substring(line.indexOf(": ") + 2)));
            return told;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    public Optional<String> tells(String path) {
        return Optional.ofNullable(told.get(path));
    }

    public Map<String, String> keys(String path) {
        return keys.getOrDefault(path, Map.of());
    }

    public Map<String, String> offers(String path) {
        return offered.getOrDefault(path, Map.of());
    }

    /** Texts of which nothing is told, in their order. */
    static Map<String, String> untold(Collection<String> texts) {
        Map<String, String> offered = new LinkedHashMap<>();
        texts.forEach(text -> offered.put(text, ""));
        return offered;
    }
}
