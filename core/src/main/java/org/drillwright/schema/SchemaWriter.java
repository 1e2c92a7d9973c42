package org.drillwright.schema;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.formatter.Scalars;
import org.drillwright.read.Shape;
import org.drillwright.wording.Message;

/** Writes shapes as schemas, each with what is told of its path. */
final class SchemaWriter {

    private static final Pattern FIGURES = Pattern.compile("-?(0|[1-9][0-9]{0,17})(\\.[0-9]+)?");
    /** Signs that a snippet of an editor takes for its own. */
    private static final Pattern SNIPPET_SIGN = Pattern.compile("[\\\\$}]");

    private static final String OTHERS = "/additionalProperties";

    /** So many words are told wherever one of them may stand. */
    private static final int FEW = 12;

    private static final int HOUR = 3600;
    private static final int KILOMETRE = 1_000;

    private final JsonGenerator json;
    private final Hints hints;
    private final Locale language;

    SchemaWriter(JsonGenerator json, Hints hints, Locale language) {
        this.language = language;
        this.json = json;
        this.hints = hints;
    }

    /**
     * Writes a schema as an object of its own.
     *
     * @param path as {@link Hints} have it
     * @param pointer to the schema itself, a fragment of an address
     * @param listed whether it is that of the items of a list
     */
    private void write(Shape shape, String path, String pointer, boolean listed) {
        object(() -> members(shape, path, pointer, listed));
    }

    /** Writes the members of the whole schema into the object that is open. */
    void members(Shape shape) {
        members(shape, "", "#", false);
    }

    private void members(Shape shape, String path, String pointer, boolean listed) {
        hints.tells(path).ifPresent(text -> put("description", text));
        if (!(shape instanceof Shape.Word)) {
            offers(hints.offers(path), listed);
        }
        shape.match(new Members(path, pointer, listed));
    }

    /**
     * Texts that may be taken over. Examples or an enumeration would be told whole wherever somebody points, so they stand in
     * a member of their own that editors know; what each is stands in a schema that only that text meets.
     */
    private void offers(Map<String, Message> offers, boolean listed) {
        if (offers.isEmpty()) {
            return;
        }
        array("defaultSnippets", offers.entrySet(), offer -> {
            put("label", offer.getKey());
            put(
                    "bodyText",
                    SNIPPET_SIGN
                            .matcher(Scalars.of(offer.getKey(), listed, true))
                            .replaceAll("\\\\$0"));
            if (!offer.getValue().isEmpty()) {
                put("description", offer.getValue());
            }
        });
        List<Map.Entry<String, Message>> told = offers.entrySet().stream()
                .filter(offer -> !offer.getValue().isEmpty())
                .toList();
        if (!told.isEmpty()) {
            array("allOf", told, offer -> {
                member("if", () -> put("const", offer.getKey()));
                member("then", () -> put("description", offer.getValue()));
            });
        }
    }

    private final class Members implements Shape.Cases<Void> {

        private final String path;
        private final String pointer;
        private final boolean listed;

        Members(String path, String pointer, boolean listed) {
            this.path = path;
            this.pointer = pointer;
            this.listed = listed;
        }

        /** Behind a key it is one way of one: then editors write the key's colon as well. */
        @Override
        public Void text(Shape.Text text) {
            if (listed) {
                anyText(text);
            } else {
                alternatives(List.of(() -> anyText(text)));
            }
            return null;
        }

        /**
         * A number or a yes that stands without quotes is read as the text that it was written as. A type that is named would be
         * offered: true and false where any text may stand.
         */
        private void anyText(Shape.Text text) {
            member("if", () -> put("type", "boolean"));
            member("else", () -> array("type", List.of("string", "number")));
            put("maxLength", text.longest());
            put("pattern", Patterns.PRESENT);
        }

        @Override
        public Void word(Shape.Word word) {
            List<Runnable> ways = new ArrayList<>();
            if (word.known().size() <= FEW && !listed) {
                ways.add(() -> values("enum", word.known().stream().map(SchemaWriter::value)));
            } else {
                Map<String, Message> offers = new LinkedHashMap<>();
                word.known()
                        .forEach(known -> offers.put(known, hints.offers(path).getOrDefault(known, Message.none())));
                offers(offers, listed);
                if (word.known().stream().map(SchemaWriter::value).anyMatch(value -> !(value instanceof String))) {
                    ways.add(() -> values(
                            "enum",
                            word.known().stream()
                                    .map(SchemaWriter::value)
                                    .filter(value -> !(value instanceof String))));
                }
            }
            ways.add(() -> {
                put("type", "string");
                pattern(Patterns.word(word), unknown(word));
            });
            if (ways.size() == 1) {
                ways.get(0).run();
            } else {
                alternatives(ways);
            }
            return null;
        }

        private Message unknown(Shape.Word word) {
            return word.known().size() <= FEW
                    ? Message.of(SchemaWriter.class, "wanted.one-of", Message.words(word.known()))
                    : Message.of(SchemaWriter.class, "wanted.known");
        }

        @Override
        public Void whole(Shape.Whole whole) {
            types("integer", "string");
            put("minimum", whole.least());
            put("maximum", whole.most());
            pattern(
                    Patterns.whole(whole.least(), whole.most()),
                    Message.of(SchemaWriter.class, "wanted.whole", whole.least(), whole.most()));
            return null;
        }

        /** Bounds are for numbers alone, the pattern for what stands between quotes. */
        @Override
        public Void value(Shape.Value value) {
            String pattern = Patterns.value(value);
            switch (value) {
                case SECONDS -> {
                    types("number", "string");
                    put("exclusiveMinimum", 0);
                    put("maximum", HOUR);
                    pattern(pattern, Message.of(SchemaWriter.class, "wanted.seconds", HOUR));
                }
                case METRES -> metres("minimum", pattern);
                case METRES_ABOVE_0 -> metres("exclusiveMinimum", pattern);
                case YES_OR_NO -> {
                    types("boolean", "string");
                    pattern(pattern, Message.of(SchemaWriter.class, "wanted.yes-or-no"));
                }
                case DATE -> {
                    put("type", "string");
                    pattern(pattern, Message.of(SchemaWriter.class, "wanted.day"));
                }
                case TIME -> {
                    put("type", "string");
                    pattern(pattern, Message.of(SchemaWriter.class, "wanted.time"));
                }
            }
            return null;
        }

        private void metres(String least, String pattern) {
            types("number", "string");
            put(least, 0);
            put("exclusiveMaximum", KILOMETRE);
            pattern(pattern, Message.of(SchemaWriter.class, "wanted.metres", KILOMETRE));
        }

        @Override
        public Void items(Shape.Items items) {
            put("type", "array");
            put("maxItems", items.most());
            name("items");
            write(items.item(), path + "/*", pointer + "/items", true);
            return null;
        }

        @Override
        public Void group(Shape.Group group) {
            put("type", "object");
            member("properties", () -> properties(group));
            others(group);
            if (!group.needed().isEmpty()) {
                array("required", group.needed());
            }
            if (!group.oneOf().isEmpty()) {
                alternatives(group.oneOf().stream()
                        .<Runnable>map(key -> () -> array("required", List.of(key)))
                        .toList());
            }
            return null;
        }

        private void properties(Shape.Group group) {
            for (Map.Entry<String, Shape> key : group.keys().entrySet()) {
                name(key.getKey());
                write(key.getValue(), child(key.getKey()), pointer + "/properties/" + key.getKey(), false);
            }
            if (group.others().isPresent()) {
                hints.keys(path).forEach(this::suggested);
            }
        }

        /** A key of the author's own choosing that is worth offering. */
        private void suggested(String key, Message told) {
            member(key, () -> {
                if (!told.isEmpty()) {
                    put("description", told);
                }
                put("$ref", pointer + OTHERS);
            });
        }

        private void others(Shape.Group group) {
            if (group.others().isEmpty()) {
                put("additionalProperties", false);
                return;
            }
            name("additionalProperties");
            write(group.others().get(), child("*"), pointer + OTHERS, false);
            member("propertyNames", () -> put("pattern", Patterns.PRESENT));
        }

        @Override
        public Void either(Shape.Either either) {
            Members group = new Members(path, pointer + "/anyOf/1", false);
            alternatives(List.of(() -> anyText(either.text()), () -> group.group(either.group())));
            return null;
        }

        private String child(String key) {
            return path.isEmpty() ? key : path + "/" + key;
        }
    }

    private void types(String one, String other) {
        array("type", List.of(one, other));
    }

    /** @param told what an editor that knows the member says in place of the pattern */
    private void pattern(String pattern, Message told) {
        put("pattern", pattern);
        put("patternErrorMessage", told);
    }

    private void alternatives(List<Runnable> schemas) {
        attempt(() -> json.writeArrayFieldStart("anyOf"));
        schemas.forEach(this::object);
        attempt(json::writeEndArray);
    }

    /** What a word is to whoever reads the file without quotes: a name of figures alone is a number. */
    private static Object value(String word) {
        if (FIGURES.matcher(word).matches()) {
            return new BigDecimal(word);
        }
        return word.equals("true") || word.equals("false") ? Boolean.valueOf(word) : word;
    }

    private void object(Runnable members) {
        attempt(json::writeStartObject);
        members.run();
        attempt(json::writeEndObject);
    }

    private void name(String key) {
        attempt(() -> json.writeFieldName(key));
    }

    void put(String key, Message value) {
        put(key, value.in(language));
    }

    void put(String key, String value) {
        attempt(() -> json.writeStringField(key, value));
    }

    private void put(String key, int value) {
        attempt(() -> json.writeNumberField(key, value));
    }

    private void put(String key, boolean value) {
        attempt(() -> json.writeBooleanField(key, value));
    }

    private void array(String key, List<String> texts) {
        values(key, texts.stream());
    }

    private void values(String key, Stream<?> values) {
        attempt(() -> {
            json.writeArrayFieldStart(key);
            for (Object value : values.toList()) {
                json.writePOJO(value);
            }
            json.writeEndArray();
        });
    }

    private <T> void array(String key, Collection<T> all, Consumer<T> members) {
        attempt(() -> json.writeArrayFieldStart(key));
        all.forEach(one -> object(() -> members.accept(one)));
        attempt(json::writeEndArray);
    }

    private void member(String key, Runnable members) {
        name(key);
        object(members);
    }

    /** Writing to memory. */
    @FunctionalInterface
    interface Writing {
        void run() throws IOException;
    }

    static void attempt(Writing writing) {
        try {
            writing.run();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
