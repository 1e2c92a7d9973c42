package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.wording.DataLines;

/** Which line each position closes with one weapon: the program's table, with the rows that a school replaces. */
public final class ParryTable {

    /**
     * @param lines the lines that the position closes; more than one where schools differ
     * @param firm whether the sources agree, so that a fault against the row is an error
     */
    public record Row(Set<Line> lines, boolean firm) {

        public Row {
            lines = Set.copyOf(lines);
        }

        /** The one line, if there is just one. */
        public Optional<Line> line() {
            return lines.size() == 1 ? Optional.of(lines.iterator().next()) : Optional.empty();
        }
    }

    private static final Map<Weapon, Map<Position, Row>> STANDARD = load();

    private final Map<Position, Row> rows;

    private ParryTable(Map<Position, Row> rows) {
        this.rows = rows;
    }

    /**
     * The table of a weapon.
     *
     * @param replaced rows of the school: position, then line, both in words; rows that name neither are passed over
     */
    public static ParryTable of(Weapon weapon, Map<String, String> replaced) {
        Map<Position, Row> rows =
                new EnumMap<>(STANDARD.getOrDefault(weapon, STANDARD.getOrDefault(Weapon.FOIL, Map.of())));
        replaced.forEach((position, line) -> position(position)
                .ifPresent(named -> line(line).ifPresent(closed -> rows.put(named, new Row(Set.of(closed), true)))));
        return new ParryTable(rows);
    }

    public Row row(Position position) {
        return rows.getOrDefault(position, new Row(Set.of(), false));
    }

    /** The positions whose row is firm and closes the line. */
    public List<Position> closing(Line line) {
        List<Position> closing = new ArrayList<>();
        for (Position position : Position.values()) {
            if (row(position).firm() && row(position).lines().contains(line)) {
                closing.add(position);
            }
        }
        return closing;
    }

    /** A position in the word of the trade. */
    public static Optional<Position> position(String word) {
        for (Position position : Position.values()) {
            if (position.word().equals(word.strip().toLowerCase(Locale.ROOT))) {
                return Optional.of(position);
            }
        }
        return Optional.empty();
    }

    /** A line in words, such as {@code high-inside} or {@code high inside}. */
    public static Optional<Line> line(String words) {
        String name = words.strip().toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
        for (Line line : Line.values()) {
            if (line.name().equals(name)) {
                return Optional.of(line);
            }
        }
        return Optional.empty();
    }

    private static Map<Weapon, Map<Position, Row>> load() {
        Map<Weapon, Map<Position, Row>> table = new EnumMap<>(Weapon.class);
        DataLines.of(ParryTable.class, "parries.table").forEach(line -> read(line, table));
        return table;
    }

    private static void read(String line, Map<Weapon, Map<Position, Row>> table) {
        String[] parts = line.replace("?", "").split("[ :]+", 3);
        Weapon weapon = Weapon.valueOf(parts[0].toUpperCase(Locale.ROOT));
        Set<Line> lines = EnumSet.noneOf(Line.class);
        for (String name : parts[2].split(",")) {
            lines.add(line(name).orElseThrow(() -> new IllegalStateException("no line is called " + name)));
        }
        table.computeIfAbsent(weapon, one -> new EnumMap<>(Position.class))
                .put(position(parts[1]).orElseThrow(), new Row(lines, !line.contains("?")));
    }
}
