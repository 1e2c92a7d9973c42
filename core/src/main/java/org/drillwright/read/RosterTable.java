package org.drillwright.read;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.record.CsvLine;
import org.drillwright.record.CsvTable;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.drillwright.source.Span;

/**
 * A roster as a table: one line a person under a heading of keys, commas or semicolons between the cells. In a cell that
 * holds several, drills and days stand between spaces, names between {@code /}.
 */
final class RosterTable {

    private static final List<String> COLUMNS =
            List.of("name", "role", "level", "hand", "skill", "knows", "days", "away", "solo", "apart");

    private static final List<String> YES = List.of("yes", "true", "x", "1");
    private static final List<String> NO = List.of("", "no", "false", "0");

    private final School school;
    private final Set<String> drills;
    private final Findings findings;
    private final List<String> heading;
    private final RosterNames names;

    private RosterTable(School school, Set<String> drills, Findings findings, List<String> heading) {
        this.school = school;
        this.drills = drills;
        this.findings = findings;
        this.heading = heading;
        this.names = new RosterNames(findings);
    }

    static Optional<Roster> read(School school, Set<String> drills, Findings findings) {
        List<CsvLine> lines = CsvTable.lines(findings.file().text());
        List<String> heading = lines.isEmpty()
                ? List.of()
                : lines.get(0).cells().stream().map(Plain::fold).toList();
        if (!heading.contains("name")) {
            findings.error(
                    ReadingRule.NEEDED_KEY.id(),
                    lines.isEmpty() ? Span.at(0) : lines.get(0).span(),
                    "The first line names no column 'name'.",
                    "Begin the table with a heading, such as: name,level,hand,knows");
            return Optional.empty();
        }
        RosterTable table = new RosterTable(school, drills, findings, heading);
        table.checkHeading(lines.get(0));
        return Optional.of(table.roster(lines.subList(1, lines.size())));
    }

    private void checkHeading(CsvLine line) {
        for (int at = 0; at < heading.size(); at++) {
            String column = heading.get(at);
            if (!COLUMNS.contains(column)) {
                unknown(column, COLUMNS, line.place(at));
            } else if (heading.indexOf(column) < at) {
                findings.error(
                        ReadingRule.KEY_ONCE.id(),
                        line.place(at),
                        "The column '" + column + "' stands here a second time.",
                        "Keep one of the two.");
            }
        }
    }

    private void unknown(String word, List<String> known, Span span) {
        findings.error(
                ReadingRule.KNOWN_WORD.id(),
                span,
                "'" + word + "' is not known here.",
                Nearest.to(word, known)
                                .map(near -> "Did you mean '" + near + "'? ")
                                .orElse("")
                        + "Known: "
                        + String.join(", ", known)
                        + ".");
    }

    private Roster roster(List<CsvLine> lines) {
        List<Person> people = new ArrayList<>();
        List<String> assistants = new ArrayList<>();
        for (CsvLine line : lines) {
            String name = cell(line, "name");
            if (line.cells().size() > heading.size()) {
                findings.error(
                        ReadingRule.RIGHT_KIND.id(),
                        line.place(heading.size()),
                        "This line has more cells than the heading.",
                        "Put a text that holds a comma between double quotes.");
            }
            if (name.isEmpty()) {
                findings.error(ReadingRule.NEEDED_KEY.id(), line.span(), "This line names nobody.", "Write a name.");
                continue;
            }
            names.take(name, place(line, "name"));
            if (choice(line, "role", List.of("student", "assistant")).equals(Optional.of("assistant"))) {
                assistants.add(name);
            } else {
                people.add(person(name, line));
            }
        }
        return new Roster(people, assistants, names.apart());
    }

    private String cell(CsvLine line, String column) {
        return line.cell(heading.indexOf(column));
    }

    private Span place(CsvLine line, String column) {
        return line.place(heading.indexOf(column));
    }

    private Person person(String name, CsvLine line) {
        List<String> levels =
                school.levels().stream().map(level -> level.name()).toList();
        Optional<String> hand = choice(
                line, "hand", Arrays.stream(Hand.values()).map(Hand::word).toList());
        for (String other : several(line, "apart", "\\s*/\\s*")) {
            names.part(name, other, place(line, "apart"));
        }
        List<String> knows = several(line, "knows", "\\s+");
        knows.forEach(drill -> RosterNames.warnUnlessKnown(drill, drills, place(line, "knows"), findings));
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
                .findFirst();
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
                    ReadingRule.RIGHT_KIND.id(),
                    place(line, "skill"),
                    "'skill' wants a whole number from 0 to 99.",
                    "Write figures alone, or leave the cell empty.");
        }
        return OptionalInt.empty();
    }

    private List<DayOfWeek> days(CsvLine line) {
        List<DayOfWeek> days = new ArrayList<>();
        for (String word : several(line, "days", "\\s+")) {
            RosterNames.day(word)
                    .ifPresentOrElse(days::add, () -> unknown(word, RosterNames.DAYS, place(line, "days")));
        }
        return days;
    }

    private boolean yes(CsvLine line, String column) {
        String written = Plain.fold(cell(line, column));
        if (!YES.contains(written) && !NO.contains(written)) {
            unknown(written, List.of("yes", "no"), place(line, column));
        }
        return YES.contains(written);
    }
}
