package org.drillwright.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What may stand behind a key, as the readers ask for it. */
public sealed interface Shape {

    <R> R match(Cases<R> cases);

    /** One branch for each kind of shape. */
    interface Cases<R> {
        R text(Text text);

        R word(Word word);

        R whole(Whole whole);

        R value(Value value);

        R items(Items items);

        R group(Group group);

        R either(Either either);
    }

    /** @param longest the most UTF-16 units, ends trimmed, in normal form C */
    record Text(int longest) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.text(this);
        }
    }

    /**
     * One of a few words.
     *
     * @param folded whether capitals and accents make no difference
     * @param also what they are called in other languages, where capitals and accents make no difference either
     */
    record Word(List<String> known, boolean folded, List<String> also) implements Shape {
        public Word {
            known = List.copyOf(known);
            also = List.copyOf(also);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.word(this);
        }
    }

    /** A whole number in at most six figures. */
    record Whole(int least, int most) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.whole(this);
        }
    }

    /** A value that is no text. */
    enum Value implements Shape {
        /** Above 0, at most 3600, at most three decimals. */
        SECONDS,
        /** Under 1000, at most two decimals. */
        METRES,
        /** Above 0, under 1000, at most two decimals. */
        METRES_ABOVE_0,
        YES_OR_NO,
        /** As ISO 8601 writes it. */
        DATE,
        /** Hours and minutes in two figures each, a colon between them. */
        TIME;

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.value(this);
        }
    }

    /** @param most items of the list */
    record Items(Shape item, int most) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.items(this);
        }
    }

    /**
     * Keys with values.
     *
     * @param keys in the order in which the reader asks for them
     * @param others what stands behind keys of the author's own choosing; empty if there are none
     * @param needed keys that may not be missing
     * @param oneOf keys of which one at least must be there; empty if that is not asked
     */
    record Group(Map<String, Shape> keys, Optional<Shape> others, List<String> needed, List<String> oneOf)
            implements Shape {
        public Group {
            keys = Collections.unmodifiableMap(new LinkedHashMap<>(keys));
            needed = List.copyOf(needed);
            oneOf = List.copyOf(oneOf);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.group(this);
        }
    }

    /** A text, or keys with values. */
    record Either(Text text, Group group) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.either(this);
        }
    }
}
