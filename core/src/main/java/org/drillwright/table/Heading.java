package org.drillwright.table;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.drillwright.wording.Message;

/** Which column of a table holds which field, as its first line says, in any order and in one of several languages. */
public final class Heading {

    private final CsvTable table;
    private final List<String> fields;
    private final TableSettings settings;
    private final Map<String, List<Integer>> columns = new LinkedHashMap<>();
    private final List<Integer> unknown = new ArrayList<>();
    private final int width;

    private Heading(CsvTable table, List<String> fields, TableSettings settings) {
        this.table = table;
        this.fields = fields;
        this.settings = settings;
        this.width = width(table);
    }

    /**
     * Reads the first line of a table that isn't empty.
     *
     * @param fields those that the table can have; a word that stands for several is the first one's
     */
    public static Heading of(CsvTable table, List<String> fields, TableSettings settings) {
        Heading heading = new Heading(table, fields, settings);
        heading.read();
        return heading;
    }

    private void read() {
        Map<String, String> told = new HashMap<>();
        settings.columns().forEach((field, heading) -> {
            if (fields.contains(field)) {
                told.put(TableWords.fold(heading), field);
            }
        });
        List<String> free =
                fields.stream().filter(field -> !told.containsValue(field)).toList();
        for (int at = 0; at < width; at++) {
            String word = TableWords.fold(words(at));
            int column = at;
            Optional.ofNullable(told.get(word))
                    .or(() -> free.stream()
                            .filter(field -> TableWords.headings(field).contains(word))
                            .findFirst())
                    .ifPresentOrElse(
                            field -> columns.computeIfAbsent(field, none -> new ArrayList<>())
                                    .add(column),
                            () -> unknown.add(column));
        }
    }

    private String words(int at) {
        return table.heading().cell(at);
    }

    /** Columns behind the last that has a heading or anything below it don't count. */
    private static int width(CsvTable table) {
        int width = table.heading().cells().size();
        while (width > 0 && isEmpty(table, width - 1)) {
            width--;
        }
        return width;
    }

    private static boolean isEmpty(CsvTable table, int column) {
        return table.lines().stream().allMatch(line -> line.cell(column).isEmpty());
    }

    /** How many columns the table has; empty ones at its right edge don't count. */
    public int width() {
        return width;
    }

    /** The column of a field, counted from 0; -1 if there is none. */
    public int column(String field) {
        return columns.getOrDefault(field, List.of(-1)).get(0);
    }

    /** Whether there is a column of a field. */
    public boolean has(String field) {
        return columns.containsKey(field);
    }

    /** The field of each column; an empty text for one that is none of this program's. */
    public List<String> inOrder() {
        return IntStream.range(0, table.heading().cells().size())
                .mapToObj(at -> fields.stream()
                        .filter(field -> column(field) == at)
                        .findFirst()
                        .orElse(""))
                .toList();
    }

    /** The headings as they stand, for a sentence. */
    public Message shown() {
        return quoted(IntStream.range(0, width).mapToObj(this::words).filter(words -> !words.isEmpty()));
    }

    private static Message quoted(Stream<String> words) {
        return Message.listed(words.map(Heading::quoted).toList());
    }

    private static Message quoted(String words) {
        return Message.of(Heading.class, "quoted", words);
    }

    /** How to say in the settings under which heading a field stands. */
    public static Message wayToSay(String field, String heading) {
        return inSchool(Message.plain("tables: {columns: {" + field + ": \"" + heading + "\"}}"));
    }

    /** What is to be written into the settings. */
    public static Message inSchool(Message setting) {
        return Message.of(Heading.class, "in.school.yaml", setting);
    }

    /** That two columns could be a field. */
    static Message two(String field, String one, String other) {
        return Message.of(Heading.class, "two.columns", name(field), one, other);
    }

    /** Asks which of several columns is a field. */
    static Message sayWhich(String field, String heading) {
        return Message.of(Heading.class, "say.which", wayToSay(field, heading));
    }

    private static Message name(String field) {
        return Message.of(Heading.class, "field." + field);
    }

    /** Tells of headings that stand for one field together, that are slips, that are missing; and names the others once. */
    public void report(String rule, Findings findings) {
        columns.forEach((field, places) -> {
            if (places.size() > 1) {
                findings.error(
                        rule,
                        table.heading().place(places.get(1)),
                        two(field, words(places.get(0)), words(places.get(1))),
                        words(places.get(0)).equals(words(places.get(1)))
                                ? Message.of(Heading.class, "two.columns.alike")
                                : sayWhich(field, words(places.get(1))));
            }
        });
        settings.columns().forEach((field, heading) -> {
            if (fields.contains(field) && !columns.containsKey(field)) {
                findings.error(
                        rule,
                        table.heading().span(),
                        Message.of(Heading.class, "no.such.column", name(field), heading),
                        Message.of(Heading.class, "columns.are", shown()));
            }
        });
        Set<String> known = fields.stream()
                .flatMap(field -> TableWords.headings(field).stream())
                .collect(Collectors.toSet());
        List<Integer> left = new ArrayList<>();
        unknown.forEach(at -> slip(at, known)
                .ifPresentOrElse(
                        near -> findings.error(
                                rule,
                                table.heading().place(at),
                                Nearest.unknown(words(at)),
                                Nearest.meant(near).then(Message.of(Heading.class, "known", Message.words(fields)))),
                        () -> left.add(at)));
        note(left, rule, findings);
    }

    private Optional<String> slip(int at, Collection<String> known) {
        return Nearest.slip(TableWords.fold(words(at)), known);
    }

    private void note(List<Integer> left, String rule, Findings findings) {
        List<Integer> filled = left.stream().filter(at -> !isEmpty(table, at)).toList();
        if (filled.isEmpty() || columns.isEmpty()) {
            return;
        }
        Message names = Message.listed(filled.stream()
                .map(at -> words(at).isEmpty() ? Message.of(Heading.class, "column.untitled") : quoted(words(at)))
                .toList());
        findings.note(
                rule,
                table.heading().place(filled.get(0)),
                Message.counted(Heading.class, "column.ignored", filled.size(), names),
                Message.of(
                        Heading.class,
                        "columns.read",
                        quoted(columns.keySet().stream().map(field -> words(column(field))))));
    }
}
