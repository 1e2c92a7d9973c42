package org.drillwright.read;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drillwright.wording.Message;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Slips that no line shows by itself, but that the YAML library names; its words are those of version 2.5. */
final class KnownStops {

    /** What its sentence contains, and the key of our words. */
    private static final Map<String, String> WORDS = new LinkedHashMap<>();

    static {
        WORDS.put("found unexpected document separator", "stop.marker.in.quotes");
        WORDS.put("expected <block end>, but found '-'", "stop.item");
        WORDS.put("expected <block end>, but found '<block sequence start>'", "stop.item");
        WORDS.put("sequence entries are not allowed here", "stop.item");
        WORDS.put("mapping values are not allowed here", "stop.no.key");
        WORDS.put("could not find expected ':'", "stop.no.colon");
        WORDS.put("mapping keys are not allowed here", "stop.question");
        WORDS.put("found undefined alias", "stop.alias");
        WORDS.put("YAML directive", "stop.directive");
        WORDS.put("incompatible YAML document", "stop.directive");
        WORDS.put("<document start>", "stop.directive");
        WORDS.put("expected ',' or", "stop.in.brackets");
    }

    private KnownStops() {}

    /** The key of what is said, and with {@code .way} of the way out. */
    static Optional<String> key(MarkedYAMLException problem) {
        String said = String.valueOf(problem.getProblem());
        return WORDS.entrySet().stream()
                .filter(entry -> said.contains(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** Whether what the library says is surer than any way of mending a line. */
    static boolean isSure(MarkedYAMLException problem) {
        return key(problem).filter("stop.marker.in.quotes"::equals).isPresent();
    }

    static Message what(String key) {
        return Message.of(KnownStops.class, key);
    }

    static Message wayOut(String key) {
        return Message.of(KnownStops.class, key + ".way");
    }
}
