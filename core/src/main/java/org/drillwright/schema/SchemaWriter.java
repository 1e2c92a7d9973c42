package org.drillwright.schema;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.drillwright.read.Shape;

/** Writes shapes as schemas, each with what is told of its path. */
final class SchemaWriter {

    private static final Pattern FIGURES = Pattern.compile("-?(0|[1-9][0-9]{0,17})(\\.[0-9]+)?");
    private static final int HOUR = 3600;
    private static final int KILOMETRE = 1_000;

    private final JsonGenerator json;
    private final Hints hints;

    SchemaWriter(JsonGenerator json, Hints hints) {
        this.json = json;
        this.hints = hints;
    }

    /** Writes a schema as an object of its own. */
    void write(Shape shape, String path) {
        object(() -> members(shape, path));
    }

    /** Writes the members of a schema into the object that is open. */
    void members(Shape shape, String path) {
        hints.tells(path).ifPresent(text -> put("description", text));
        if (!hints.offers(path).isEmpty()) {
            array("examples", hints.offers(path));
        }
        shape.match(new Members(path));
    }

    private final class Members implements Shape.Cases<Void> {

        private final String path;

        Members(String path) {
            this.path = path;
        }

        /** A number or a yes that stands without quotes is read as the text that it was written as. */
        @Override
        public Void text(Shape.Text text) {
            array("type", List.of("string", "number", "boolean"));
            put("maxLength", text.longest());
            put("pattern", Patterns.PRESENT);
            return null;
        }

        @Override
        public Void word(Shape.Word word) {
            twoWays(() -> enumeration(word.known()), () -> string(Patterns.word(word)));
            return null;
        }

        @Override
        public Void whole(Shape.Whole whole) {
            twoWays(
                    () -> {
                        put("type", "integer");
                        put("minimum", whole.least());
                        put("maximum", whole.most());
                    },
                    () -> string(Patterns.whole(whole.least(), whole.most())));
            return null;
        }

        private void metres(String least) {
            put("type", "number");
            put(least, 0);
            put("exclusiveMaximum", KILOMETRE);
        }

        @Override
        public Void value(Shape.Value value) {
            String pattern = Patterns.value(value);
            switch (value) {
                case SECONDS ->
                    twoWays(
                            () -> {
                                put("type", "number");
                                put("exclusiveMinimum", 0);
                                put("maximum", HOUR);
                            },
                            () -> string(pattern));
                case METRES -> twoWays(() -> metres("minimum"), () -> string(pattern));
                case METRES_ABOVE_0 -> twoWays(() -> metres("exclusiveMinimum"), () -> string(pattern));
                case YES_OR_NO -> twoWays(() -> put("type", "boolean"), () -> string(pattern));
                case DATE, TIME -> string(pattern);
            }
            return null;
        }

        @Override
        public Void items(Shape.Items items) {
            put("type", "array");
            put("maxItems", items.most());
            name("items");
            write(items.item(), path + "/*");
            return null;
        }

        @Override
        public Void group(Shape.Group group) {
            put("type", "object");
            name("properties");
            object(() -> properties(group));
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
                write(key.getValue(), child(key.getKey()));
            }
            group.others().ifPresent(this::suggested);
        }

        /** Keys of the author's own choosing that are worth offering. */
        private void suggested(Shape others) {
            hints.keys(path).forEach((key, told) -> {
                name(key);
                object(() -> {
                    put("description", told);
                    others.match(new Members(child("*")));
                });
            });
        }

        private void others(Shape.Group group) {
            if (group.others().isEmpty()) {
                put("additionalProperties", false);
                return;
            }
            name("additionalProperties");
            write(group.others().get(), child("*"));
            name("propertyNames");
            object(() -> put("pattern", Patterns.PRESENT));
        }

        @Override
        public Void either(Shape.Either either) {
            twoWays(() -> text(either.text()), () -> group(either.group()));
            return null;
        }

        private String child(String key) {
            return path.isEmpty() ? key : path + "/" + key;
        }
    }

    private void string(String pattern) {
        put("type", "string");
        put("pattern", pattern);
    }

    private void twoWays(Runnable one, Runnable other) {
        alternatives(List.of(one, other));
    }

    private void alternatives(List<Runnable> schemas) {
        attempt(() -> json.writeArrayFieldStart("anyOf"));
        schemas.forEach(this::object);
        attempt(json::writeEndArray);
    }

    /** A name of figures alone is a number to whoever reads the file without quotes. */
    private void enumeration(List<String> words) {
        attempt(() -> {
            json.writeArrayFieldStart("enum");
            for (String word : words) {
                json.writeString(word);
                if (FIGURES.matcher(word).matches()) {
                    json.writeNumber(new BigDecimal(word));
                } else if (word.equals("true") || word.equals("false")) {
                    json.writeBoolean(word.equals("true"));
                }
            }
            json.writeEndArray();
        });
    }

    private void object(Runnable members) {
        attempt(json::writeStartObject);
        members.run();
        attempt(json::writeEndObject);
    }

    private void name(String key) {
        attempt(() -> json.writeFieldName(key));
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
        attempt(() -> {
            json.writeArrayFieldStart(key);
            for (String text : texts) {
                json.writeString(text);
            }
            json.writeEndArray();
        });
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
