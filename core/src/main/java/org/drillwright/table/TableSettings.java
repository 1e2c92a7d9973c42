package org.drillwright.table;

import java.util.Map;
import java.util.Optional;

/**
 * What a school says of its tables where they leave it open.
 *
 * @param dates in which order the figures of a date stand
 * @param columns by field the heading under which it stands
 */
public record TableSettings(Optional<DateOrder> dates, Map<String, String> columns) {

    /** Nothing is said. */
    public static final TableSettings NONE = new TableSettings(Optional.empty(), Map.of());

    public TableSettings {
        columns = Map.copyOf(columns);
    }
}
