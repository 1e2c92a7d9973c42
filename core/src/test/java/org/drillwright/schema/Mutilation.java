package org.drillwright.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Changes a tree at random: a value put in place of another, a key dropped, misnamed or added, an item doubled. */
final class Mutilation {

    private static final List<String> KEYS = List.of(
            "titel", "Title", "x", "1", " ", "note", "call", "number", "say", "means", "level", "drills", "tempo",
            "gear");

    private static final List<String> VALUES = List.of(
            "'x'",
            "''",
            "' '",
            "'7'",
            "'foil'",
            "'Foil'",
            "'\u00c9p\u00e9e'",
            "'epe\u0301e'",
            "'beginner'",
            "'Beginner'",
            "'partner'",
            "'a6'",
            "'3X5'",
            "'A4'",
            "'fr'",
            "'one'",
            "'by-the-count'",
            "'line'",
            "'opposite '",
            "'true'",
            "'Yes'",
            "'nO'",
            "'maybe'",
            "'2026-09-01'",
            "' 2026-12-31'",
            "'2026-13-01'",
            "'2026-1-1'",
            "'1.5'",
            "'1,5'",
            "'0'",
            "'0.000'",
            "'3600'",
            "'3600.001'",
            "'3601'",
            "'3599.999'",
            "'999'",
            "'1000'",
            "'000999'",
            "'0000999'",
            "'1001'",
            "'1.2345'",
            "0",
            "1",
            "7",
            "999",
            "1000",
            "1001",
            "1.5",
            "3600",
            "3601",
            "-1",
            "12345678",
            "true",
            "false",
            "[]",
            "['x']",
            "['line', 'timing']",
            "[7, 'x']",
            "['']",
            "[[]]",
            "{}",
            "{'x': 'y'}",
            "{'x': ['y']}",
            "{'x': {'drills': ['y']}}",
            "{'say': 'x', 'means': 'y'}",
            "{'say': 'x'}",
            "{'name': 'x'}",
            "{'quarte': 'high-inside'}",
            "{'leader': 'x'}",
            "[{'leader': 'x'}]",
            "[{}]",
            "{' ': 'x'}",
            "@120",
            "@121",
            "@400",
            "@401",
            "@2000",
            "@2001");

    private final Random random;

    Mutilation(long seed) {
        this.random = new Random(seed);
    }

    /** The tree with up to three changes. */
    ObjectNode of(ObjectNode whole) {
        ObjectNode tree = whole.deepCopy();
        for (int change = random.nextInt(4); change > 0; change--) {
            List<ContainerNode<?>> places = new ArrayList<>();
            gather(tree, places);
            change(places.get(random.nextInt(places.size())));
        }
        return tree;
    }

    private static void gather(JsonNode node, List<ContainerNode<?>> places) {
        if (node instanceof ContainerNode<?> container) {
            places.add(container);
            container.forEach(inner -> gather(inner, places));
        }
    }

    private void change(ContainerNode<?> place) {
        if (place instanceof ObjectNode object) {
            change(object);
        } else if (place instanceof ArrayNode array && !array.isEmpty()) {
            int at = random.nextInt(array.size());
            switch (random.nextInt(3)) {
                case 0 -> array.remove(at);
                case 1 -> array.set(at, value());
                default -> array.add(array.get(at).deepCopy());
            }
        }
    }

    private void change(ObjectNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        if (keys.isEmpty() || random.nextInt(4) == 0) {
            object.set(KEYS.get(random.nextInt(KEYS.size())), value());
            return;
        }
        String key = keys.get(random.nextInt(keys.size()));
        switch (random.nextInt(4)) {
            case 0 -> object.remove(key);
            case 1 -> object.set(KEYS.get(random.nextInt(KEYS.size())), object.remove(key));
            default -> object.set(key, value());
        }
    }

    private JsonNode value() {
        String written = VALUES.get(random.nextInt(VALUES.size()));
        return Verdicts.seen(written.startsWith("@") ? "x".repeat(Integer.parseInt(written.substring(1))) : written);
    }
}
