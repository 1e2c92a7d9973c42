package org.drillwright.read;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.drillwright.plan.term.Exam;
import org.drillwright.plan.term.Pace;
import org.drillwright.plan.term.Term;
import org.drillwright.plan.term.TermDay;
import org.drillwright.plan.term.TermGroup;
import org.drillwright.source.FieldPath;

/**
 * Reads what is asked for a term.
 *
 * <pre>{@code
 * title: Autumn
 * begins: "19:00"
 * dates:
 *   - {key: c1, date: 2026-09-02}
 *   - {key: c2, date: 2026-09-09, no-new: yes, away: [Ash]}
 * groups:
 *   - {name: intermediate, drills: [intermediate]}
 * exam: {date: 2026-12-02, drills: [parry-of-quarte]}
 * }</pre>
 */
public final class TermReader {

    /** Classes of a term. */
    public static final int MOST_CLASSES = 200;

    /** Drills of a group: what is planned for more would take minutes. */
    public static final int MOST_DRILLS = 200;

    private final Duration usual;
    private final List<String> people;
    private final Map<String, List<String>> drills;

    /**
     * For the terms of a school.
     *
     * @param usual how long a class lasts that says nothing else
     * @param people names of those who train, in the roster's order
     * @param drills what a group may name, each with the drills that it stands for: a drill itself, or a set's in their order
     */
    public TermReader(Duration usual, List<String> people, Map<String, List<String>> drills) {
        this.usual = usual;
        this.people = List.copyOf(people);
        this.drills = Map.copyOf(drills);
    }

    /** What a file of a term may hold. */
    public static Shape.Group shape() {
        TermReader reader = new TermReader(Duration.ZERO, List.of(), Map.of());
        return ShapeRecorder.of(keys -> reader.term(keys, new TermMentions()));
    }

    /** @param name the file's name as it is shown */
    public Reading<Term> read(String name, byte[] bytes) {
        return NodeReader.reading(name, bytes, () -> FileKeys.of(shape()), nodes -> term(nodes));
    }

    private Term term(NodeReader nodes) {
        MappingReader keys = nodes.root();
        TermMentions mentions = new TermMentions();
        Term term = term(keys, mentions);
        keys.finish();
        mentions.report(nodes, Set.copyOf(people), drills, term.groups());
        return term;
    }

    private Term term(Keys keys, TermMentions mentions) {
        String title = keys.text("title", ReadingLimits.SHORT_TEXT).orElse("");
        String place = keys.text("place", ReadingLimits.SHORT_TEXT).orElse("");
        Optional<LocalTime> begins = keys.time("begins");
        Optional<ZoneId> zone = zone(keys, mentions);
        Duration length = minutes(keys, "minutes", 1_000, usual);
        Pace pace = new Pace(
                keys.wholeNumber("new-a-class", 1, 40).orElse(Pace.USUAL.newAClass()),
                minutes(keys, "new", 240, Pace.USUAL.asNew()),
                minutes(keys, "again", 240, Pace.USUAL.again()));
        keys.need("dates");
        List<TermDay> days = keys.groups("dates", MOST_CLASSES, day -> day(day, begins, length, mentions));
        keys.need("groups");
        List<TermGroup> groups = groups(keys, mentions);
        Map<String, Integer> values =
                keys.group("value", named -> values(named, mentions)).orElse(Map.of());
        Map<String, Integer> fundamentals = keys.group("fundamentals", named -> fundamentals(named, mentions))
                .orElse(Map.of());
        return new Term(
                title,
                place,
                zone,
                days,
                groups,
                pace,
                values,
                fundamentals,
                keys.group("exam", named -> exam(named, mentions)));
    }

    private static Optional<ZoneId> zone(Keys keys, TermMentions mentions) {
        Optional<String> written = keys.text("zone", ReadingLimits.SHORT_TEXT);
        try {
            return written.map(ZoneId::of);
        } catch (DateTimeException unknown) {
            mentions.noZone(keys.path().key("zone"), written.orElse(""));
            return Optional.empty();
        }
    }

    private static Duration minutes(Keys keys, String key, int most, Duration otherwise) {
        OptionalInt minutes = keys.wholeNumber(key, 1, most);
        return minutes.isPresent() ? Duration.ofMinutes(minutes.getAsInt()) : otherwise;
    }

    private static TermDay day(Keys keys, Optional<LocalTime> begins, Duration length, TermMentions mentions) {
        String key = keys.needed("key", ReadingLimits.SHORT_TEXT);
        keys.need("date");
        Optional<LocalDate> date = keys.date("date");
        mentions.day(keys.path(), key, date);
        TermDay day = new TermDay(
                key,
                date.orElse(LocalDate.EPOCH),
                keys.time("begins").or(() -> begins),
                minutes(keys, "minutes", 1_000, length),
                keys.yesOrNo("no-new").orElse(false),
                new HashSet<>(mentions.people(keys, "away")));
        keys.finish();
        return day;
    }

    /** Whoever stands in no other group belongs to one that names nobody. */
    private List<TermGroup> groups(Keys keys, TermMentions mentions) {
        List<TermGroup> stated = keys.groups("groups", ReadingLimits.ITEMS, group -> group(group, mentions));
        Set<String> placed =
                stated.stream().flatMap(group -> group.people().stream()).collect(Collectors.toSet());
        List<String> others =
                people.stream().filter(person -> !placed.contains(person)).toList();
        return stated.stream()
                .map(group -> group.people().isEmpty() ? new TermGroup(group.name(), others, group.drills()) : group)
                .toList();
    }

    private TermGroup group(Keys keys, TermMentions mentions) {
        String name = keys.needed("name", ReadingLimits.SHORT_TEXT);
        List<String> named = mentions.people(keys, "people");
        mentions.group(keys.path(), name, named);
        keys.need("drills");
        Set<String> taught = new LinkedHashSet<>();
        mentions.taught(keys, "drills").forEach(drill -> taught.addAll(drills.getOrDefault(drill, List.of())));
        if (taught.size() > MOST_DRILLS) {
            mentions.tooMany(keys.path().key("drills"), taught.size());
        }
        keys.finish();
        return new TermGroup(name, people.stream().filter(named::contains).toList(), new ArrayList<>(taught));
    }

    private static Map<String, Integer> values(Keys keys, TermMentions mentions) {
        return keys.byName((named, drill) -> {
            OptionalInt value = named.wholeNumber(drill, 1, 100);
            mentions.drill(drill, named.path().key(drill));
            return value.isPresent() ? Optional.of(value.getAsInt()) : Optional.empty();
        });
    }

    private static Map<String, Integer> fundamentals(Keys keys, TermMentions mentions) {
        int weeks = keys.wholeNumber("at-least-every", 1, 52).orElse(Term.AT_LEAST_EVERY);
        keys.need("drills");
        Map<String, Integer> fundamentals = new TreeMap<>();
        mentions.drills(keys, "drills").forEach(drill -> fundamentals.put(drill, weeks));
        keys.finish();
        return fundamentals;
    }

    private static Exam exam(Keys keys, TermMentions mentions) {
        keys.need("date");
        Optional<LocalDate> date = keys.date("date");
        keys.need("drills");
        Exam exam = new Exam(
                date.orElse(LocalDate.EPOCH),
                mentions.drills(keys, "drills"),
                keys.wholeNumber("workings", 1, 20).orElse(Exam.WORKINGS));
        date.ifPresent(day -> mentions.exam(keys.path().key("date"), day));
        keys.finish();
        return exam;
    }

    /** What stands at a place of the file. */
    record Mention(String name, FieldPath at) {}
}
