package org.drillwright.table;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.source.Findings;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/**
 * The columns in which the names of people stand: a whole name in one, or its two parts in two. What is called just 'name',
 * 'nom' or 'nome' is the part that the other one isn't.
 *
 * @param columns counted from 0, the one that is read first in front
 */
public record NameColumns(List<Integer> columns) {

    private static final String NAME = "name";
    private static final String FULL = "full-name";
    private static final String FIRST = "first-name";
    private static final String LAST = "last-name";

    /** The fields of which a name can come. */
    public static final List<String> FIELDS = List.of(NAME, FULL, FIRST, LAST);

    public NameColumns {
        columns = List.copyOf(columns);
    }

    /** Finds them; nothing, with one finding, if no column is a name, or two could be. */
    public static Optional<NameColumns> of(
            Heading heading, TableSettings settings, CsvTable table, String rule, Findings findings) {
        boolean name = heading.has(NAME);
        if (settings.columns().containsKey(NAME) && name) {
            return Optional.of(columns(heading, NAME));
        }
        boolean first = heading.has(FIRST);
        boolean last = heading.has(LAST);
        if (first && (last || name)) {
            return Optional.of(columns(heading, FIRST, last ? LAST : NAME));
        }
        if (name && last) {
            return Optional.of(columns(heading, NAME, LAST));
        }
        if (name && heading.has(FULL)) {
            String full = table.heading().cell(heading.column(FULL));
            findings.error(
                    rule,
                    table.heading().place(heading.column(FULL)),
                    Heading.two(NAME, table.heading().cell(heading.column(NAME)), full),
                    Heading.sayWhich(NAME, full));
            return Optional.empty();
        }
        Optional<String> only = FIELDS.stream().filter(heading::has).findFirst();
        if (only.isEmpty()) {
            findings.error(
                    rule,
                    table.heading().span(),
                    Message.of(NameColumns.class, "no.name", heading.shown()),
                    Message.of(
                            NameColumns.class,
                            "no.name.way",
                            Heading.wayToSay(NAME, table.heading().cell(0))));
        }
        return only.map(field -> columns(heading, field));
    }

    private static NameColumns columns(Heading heading, String... fields) {
        return new NameColumns(List.of(fields).stream().map(heading::column).toList());
    }

    /** The name in a line; empty if none stands there. */
    public String name(CsvLine line) {
        return columns.stream().map(line::cell).filter(part -> !part.isEmpty()).collect(Collectors.joining(" "));
    }

    /** Where it stands. */
    public Span place(CsvLine line) {
        return line.place(columns.get(0));
    }
}
