package org.drillwright.print.command.watch.web;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** What stands behind the question mark of an address. */
public final class Query {

    private final Map<String, String> values = new HashMap<>();

    /** @param raw as it was sent, with its percent signs; what cannot be decoded is left out */
    Query(String raw) {
        for (String pair : raw.split("&")) {
            int equals = pair.indexOf('=');
            if (equals > 0) {
                decoded(pair.substring(equals + 1)).ifPresent(value -> values.put(pair.substring(0, equals), value));
            }
        }
    }

    private static Optional<String> decoded(String value) {
        try {
            return Optional.of(URLDecoder.decode(value, StandardCharsets.UTF_8));
        } catch (IllegalArgumentException malformed) {
            return Optional.empty();
        }
    }

    public Optional<String> text(String key) {
        return Optional.ofNullable(values.get(key));
    }

    /** A whole number of at most four digits, 0 or more. */
    public OptionalInt number(String key) {
        String value = values.getOrDefault(key, "");
        return value.matches("[0-9]{1,4}") ? OptionalInt.of(Integer.parseInt(value)) : OptionalInt.empty();
    }
}
