package org.drillwright.source;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where each value of a file stands.
 *
 * @param fields what is there, by its path
 * @param lost keys whose value could not be read, or is missing and needed; the rest of the file was read without it
 */
public record SourcePlaces(Map<FieldPath, Field> fields, Set<FieldPath> lost) {

    public SourcePlaces {
        fields = Map.copyOf(fields);
        lost = Set.copyOf(lost);
    }

    /** The places of a file of which nothing was lost. */
    public SourcePlaces(Map<FieldPath, Field> fields) {
        this(fields, Set.of());
    }

    public Optional<Field> field(FieldPath path) {
        return Optional.ofNullable(fields.get(path));
    }

    /** The words of a text, if it is there. */
    public Optional<Written> words(FieldPath path) {
        return field(path).map(Field::words);
    }

    /** The place of a value, or of the nearest thing around it if the value is absent. */
    public Span span(FieldPath path) {
        String text = path.text();
        while (!text.isEmpty()) {
            Field field = fields.get(new FieldPath(text));
            if (field != null) {
                return text.equals(path.text()) ? field.value() : field.key();
            }
            text = text.substring(0, Math.max(0, text.lastIndexOf('/')));
        }
        return Span.at(0);
    }
}
