package org.drillwright.read;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;
import org.drillwright.source.Span;
import org.drillwright.table.TableSettings;

/**
 * Reads a roster: {@code roster.yaml}, or a table ({@code roster.csv}) whose heading names the same keys.
 *
 * <pre>{@code
 * people:
 *   - {name: Ash, level: beginner, hand: left, knows: [straight-thrust], apart: [Bo]}
 *   - name: Bo
 * assistants: [Cy]
 * }</pre>
 */
public final class RosterReader {

    private final School school;
    private final Set<String> drills;
    private final TableSettings tables;

    /** For a school that says nothing of its tables. */
    public RosterReader(School school, Collection<String> drills) {
        this(school, drills, TableSettings.NONE);
    }

    /** @param drills ids of the school's drills; a drill known that isn't among them is a warning */
    public RosterReader(School school, Collection<String> drills, TableSettings tables) {
        this.school = school;
        this.drills = Set.copyOf(drills);
        this.tables = tables;
    }

    /** @param name the file's name as it is shown; one that ends in {@code .csv} is read as a table */
    public Reading<Roster> read(String name, byte[] bytes) {
        boolean isTable = name.toLowerCase(Locale.ROOT).endsWith(".csv");
        FileText text = isTable ? FileText.table(name, bytes) : FileText.decode(name, bytes);
        Findings findings = new Findings(text.file());
        findings.addAll(text.findings());
        Optional<Roster> roster = Optional.empty();
        if (text.usable()) {
            roster = isTable ? RosterTable.read(school, drills, tables, findings) : yaml(text.file(), findings);
        }
        return new Reading<>(findings.hasError() ? Optional.empty() : roster, findings.list());
    }

    /** Where everything stands in a roster that isn't a table, for whoever writes into it. */
    public SourcePlaces places(SourceFile file) {
        Findings findings = new Findings(file);
        return YamlDocument.compose(file, findings, () -> FileKeys.NONE)
                .map(document -> {
                    NodeReader nodes = new NodeReader(document, findings);
                    var unused = roster(nodes);
                    return nodes.places();
                })
                .orElseGet(() -> new SourcePlaces(Map.of()));
    }

    private Optional<Roster> yaml(SourceFile file, Findings findings) {
        return YamlDocument.compose(file, findings, () -> FileKeys.of(shape()))
                .map(document -> roster(new NodeReader(document, findings)));
    }

    /** What a roster may hold that isn't a table. */
    public Shape.Group shape() {
        return ShapeRecorder.of(keys -> read(keys, new ArrayList<>()));
    }

    /** Somebody who was read, and where. */
    private record Placed(Person person, FieldPath at) {}

    private List<String> read(Keys keys, List<Placed> people) {
        keys.need("people");
        var unused = keys.groups("people", ReadingLimits.ITEMS, one -> people.add(new Placed(person(one), one.path())));
        return keys.texts("assistants", ReadingLimits.SHORT_TEXT);
    }

    private Roster roster(NodeReader nodes) {
        MappingReader keys = nodes.root();
        List<Placed> people = new ArrayList<>();
        List<String> assistants = read(keys, people);
        RosterNames names = new RosterNames(nodes.findings());
        people.forEach(one -> take(one, nodes, names));
        FieldPath path = keys.path().key("assistants");
        for (int at = 0; at < assistants.size(); at++) {
            names.take(assistants.get(at), nodes.places().span(path.item(at)));
        }
        keys.finish();
        return new Roster(people.stream().map(Placed::person).toList(), assistants, names.apart(), names.former());
    }

    private Person person(Keys keys) {
        String name = keys.needed("name", ReadingLimits.SHORT_TEXT);
        List<String> levels =
                school.levels().stream().map(level -> level.name()).toList();
        Person person = new Person(
                name,
                keys.choice("level", levels, level -> level),
                keys.choice("hand", List.of(Hand.values()), Hand::word),
                keys.wholeNumber("skill", 0, 99),
                new HashSet<>(keys.texts("knows", ReadingLimits.SHORT_TEXT)),
                days(keys),
                keys.yesOrNo("away").orElse(false),
                keys.yesOrNo("solo").orElse(false));
        keys.texts("apart", ReadingLimits.SHORT_TEXT);
        keys.texts("was", ReadingLimits.SHORT_TEXT);
        keys.finish();
        return person;
    }

    private void take(Placed placed, NodeReader nodes, RosterNames names) {
        String name = placed.person().name();
        names.take(name, nodes.places().span(placed.at().key("name")));
        forEach(
                placed.at(),
                "knows",
                nodes,
                (drill, span) -> RosterNames.warnUnlessKnown(drill, drills, span, nodes.findings()));
        forEach(placed.at(), "apart", nodes, (other, span) -> names.part(name, other, span));
        forEach(placed.at(), "was", nodes, (old, span) -> names.was(old, name, span));
    }

    /** Told of each text of a list that was read, and where it stands. */
    private interface Item {
        void is(String text, Span span);
    }

    private static void forEach(FieldPath person, String key, NodeReader nodes, Item item) {
        SourcePlaces places = nodes.places();
        FieldPath path = person.key(key);
        for (int at = 0; places.field(path.item(at)).isPresent(); at++) {
            Span span = places.span(path.item(at));
            places.words(path.item(at)).ifPresent(words -> item.is(words.text(), span));
        }
    }

    private static List<DayOfWeek> days(Keys keys) {
        return keys.choices("days", List.of(DayOfWeek.values()), RosterNames::word);
    }
}
