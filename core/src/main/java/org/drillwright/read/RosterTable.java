package org.drillwright.read;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.drillwright.source.Span;
import org.drillwright.table.CsvLine;
import org.drillwright.table.CsvTable;
import org.drillwright.table.Damage;
import org.drillwright.table.Heading;
import org.drillwright.table.NameColumns;
import org.drillwright.table.Repeated;
import org.drillwright.table.TableSettings;
import org.drillwright.table.TableWords;
import org.drillwright.wording.Message;
import org.drillwright.wording.Plain;

/**
 * A roster as a table: one line a person under a heading of keys. In a cell that holds several, drills and days stand
 * between spaces or commas, names between {@code /}.
 */
final class RosterTable {

    private static final List<String> FIELDS = Stream.concat(
                    NameColumns.FIELDS.stream(),
                    Stream.of("role", "level", "hand", "skill", "knows", "days", "away", "solo", "apart", "was"))
            .toList();

    private static final Message AS_TEXT = Message.of(RosterTable.class, "damaged.way");

    private static final String BETWEEN_WORDS = "[\\s,;]+";

    private final School school;
    private final Set<String> drills;
    private final Findings findings;
    private final Heading heading;
    private final NameColumns named;
    private final RosterNames names;
    private final Repeated unknown = new Repeated();

    private RosterTable(School school, Set<String> drills, Findings findings, Heading heading, NameColumns named) {
        this.school = school;
        this.drills = drills;
        this.findings = findings;
        this.heading = heading;
        this.named = named;
        this.names = new RosterNames(findings);
    }

    static Optional<Roster> read(School school, Set<String> drills, TableSettings settings, Findings findings) {
        CsvTable table = CsvTable.of(findings.file().text());
        if (table.isEmpty()) {
            findings.error(
                    ReadingRule.KEY_MISSING.id(),
                    Span.at(0),
                    Message.of(RosterTable.class, "table.empty"),
                    Message.of(RosterTable.class, "table.empty.way"));
            return Optional.empty();
        }
        Heading heading = Heading.of(table, FIELDS, settings);
        heading.report(ReadingRule.UNKNOWN_WORD.id(), findings);
        return NameColumns.of(heading, settings, table, ReadingRule.KEY_MISSING.id(), findings)
                .map(named -> new RosterTable(school, drills, findings, heading, named).roster(table.body()));
    }

    private void unknown(String word, List<String> known, Span span) {
        findings.error(
                ReadingRule.UNKNOWN_WORD.id(),
                span,
                Nearest.unknown(word),
                Nearest.meant(word, known)
                        .orElse(Message.none())
                        .then(Message.of(RosterTable.class, "known", Message.words(known))));
    }

    private Roster roster(List<CsvLine> lines) {
        List<Person> people = new ArrayList<>();
        List<String> assistants = new ArrayList<>();
        for (CsvLine line : lines) {
            String name = named.name(line);
            if (line.isLongerThan(heading.width())) {
                findings.error(
                        ReadingRule.WRONG_KIND.id(),
                        line.place(heading.width()),
                        Message.of(RosterTable.class, "too.many.cells"),
                        Message.of(RosterTable.class, "too.many.cells.way"));
            }
            if (name.isEmpty()) {
                findings.error(
                        ReadingRule.KEY_MISSING.id(),
                        line.span(),
                        Message.of(RosterTable.class, "no.name"),
                        Message.of(RosterTable.class, "no.name.way"));
                continue;
            }
            undamaged(name, named.place(line));
            names.take(name, named.place(line));
            several(line, "was", "\\s*/\\s*").forEach(old -> names.was(old, name, place(line, "was")));
            if (choice(line, "role", List.of("student", "assistant")).equals(Optional.of("assistant"))) {
                assistants.add(name);
            } else {
                people.add(person(name, line));
            }
        }
        unknown.report(findings);
        return new Roster(people, assistants, names.apart(), names.former());
    }

    private void unknownDrill(String drill, CsvLine line) {
        Optional<Message> damage = Damage.of(drill);
        unknown.add(
                ReadingRule.UNKNOWN_WORD.id(),
                place(line, "knows"),
                damage.map(what -> Message.of(RosterTable.class, "drill.damaged", drill, what))
                        .orElseGet(() -> RosterNames.unknownDrill(drill)),
                () -> damage.isPresent() ? AS_TEXT : RosterNames.wayOut(drill, drills));
    }

    private void undamaged(String name, Span span) {
        Damage.of(name)
                .ifPresent(what -> findings.error(
                        ReadingRule.UNKNOWN_WORD.id(),
                        span,
                        Message.of(RosterTable.class, "name.damaged", name, what),
                        AS_TEXT));
    }

    private String cell(CsvLine line, String column) {
        return line.cell(heading.column(column));
    }

    private Span place(CsvLine line, String column) {
        return line.place(heading.column(column));
    }

    private Person person(String name, CsvLine line) {
        List<String> levels =
                school.levels().stream().map(level -> level.name()).toList();
        Optional<String> hand = choice(
                line, "hand", Arrays.stream(Hand.values()).map(Hand::word).toList());
        for (String other : several(line, "apart", "\\s*/\\s*")) {
            names.part(name, other, place(line, "apart"));
        }
        List<String> knows = several(line, "knows", BETWEEN_WORDS);
        knows.stream().filter(drill -> !drills.contains(drill)).forEach(drill -> unknownDrill(drill, line));
        return new Person(
                name,
                choice(line, "level", levels),
                hand.map(word -> word.equals(Hand.LEFT.word()) ? Hand.LEFT : Hand.RIGHT),
                skill(line),
                new HashSet<>(knows),
                days(line),
                yes(line, "away"),
                yes(line, "solo"));
    }

    private Optional<String> choice(CsvLine line, String column, List<String> choices) {
        String written = cell(line, column);
        Optional<String> found = choices.stream()
                .filter(word -> word.equals(Plain.fold(written)))
                .findFirst()
                .or(() -> TableWords.value(column, written).filter(choices::contains));
        if (found.isEmpty() && !written.isEmpty()) {
            unknown(written, choices, place(line, column));
        }
        return found;
    }

    private List<String> several(CsvLine line, String column, String between) {
        return Arrays.stream(cell(line, column).split(between))
                .filter(item -> !item.isEmpty())
                .toList();
    }

    private OptionalInt skill(CsvLine line) {
        String written = cell(line, "skill");
        if (written.matches("\\d{1,2}")) {
            return OptionalInt.of(Integer.parseInt(written));
        }
        if (!written.isEmpty()) {
            findings.error(
                    ReadingRule.WRONG_KIND.id(),
                    place(line, "skill"),
                    Message.of(RosterTable.class, "needs.whole.number", "skill", 0, 99),
                    Message.of(RosterTable.class, "needs.whole.number.or.nothing"));
        }
        return OptionalInt.empty();
    }

    private List<DayOfWeek> days(CsvLine line) {
        List<DayOfWeek> days = new ArrayList<>();
        for (String word : several(line, "days", BETWEEN_WORDS)) {
            TableWords.value("days", word)
                    .flatMap(RosterNames::day)
                    .ifPresentOrElse(days::add, () -> unknown(word, RosterNames.DAYS, place(line, "days")));
        }
        return days;
    }

    private boolean yes(CsvLine line, String column) {
        return choice(line, column, List.of("yes", "no")).equals(Optional.of("yes"));
    }
}
