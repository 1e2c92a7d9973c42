package org.drillwright.read;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.plan.term.TermGroup;
import org.drillwright.read.TermReader.Mention;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Nearest;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** What a term names, noted while it is read, and told where it is unknown or doesn't fit once all of it was read. */
final class TermMentions {

    private record Day(FieldPath at, String key, Optional<LocalDate> date) {}

    private record Placed(Mention group, Mention person) {}

    private final List<Mention> people = new ArrayList<>();
    private final List<Mention> taught = new ArrayList<>();
    private final List<Mention> drills = new ArrayList<>();
    private final List<Mention> zones = new ArrayList<>();
    private final List<Mention> crowded = new ArrayList<>();
    private final List<Mention> groups = new ArrayList<>();
    private final List<Placed> placed = new ArrayList<>();
    private final List<Day> days = new ArrayList<>();
    private Optional<Day> exam = Optional.empty();

    void noZone(FieldPath at, String written) {
        zones.add(new Mention(written, at));
    }

    void tooMany(FieldPath at, int drills) {
        crowded.add(new Mention(String.valueOf(drills), at));
    }

    void day(FieldPath at, String key, Optional<LocalDate> date) {
        days.add(new Day(at, key, date));
    }

    void exam(FieldPath at, LocalDate date) {
        exam = Optional.of(new Day(at, "", Optional.of(date)));
    }

    List<String> people(Keys keys, String key) {
        return noted(keys, key, people);
    }

    /** Drills and sets that a group is taught. */
    List<String> taught(Keys keys, String key) {
        return noted(keys, key, taught);
    }

    /** Drills that some group must be taught. */
    List<String> drills(Keys keys, String key) {
        return noted(keys, key, drills);
    }

    void drill(String drill, FieldPath at) {
        drills.add(new Mention(drill, at));
    }

    void group(FieldPath at, String name, List<String> named) {
        Mention group = new Mention(name, at.key("name"));
        groups.add(group);
        for (int item = 0; item < named.size(); item++) {
            placed.add(new Placed(
                    group, new Mention(named.get(item), at.key("people").item(item))));
        }
    }

    private static List<String> noted(Keys keys, String key, List<Mention> into) {
        List<String> names = keys.texts(key, ReadingLimits.SHORT_TEXT);
        for (int item = 0; item < names.size(); item++) {
            into.add(new Mention(names.get(item), keys.path().key(key).item(item)));
        }
        return names;
    }

    /**
     * Tells what doesn't fit.
     *
     * @param roster the names of those who train
     * @param known what a group may be taught
     */
    void report(NodeReader nodes, Set<String> roster, Map<String, List<String>> known, List<TermGroup> read) {
        zones.forEach(zone -> error(
                nodes,
                zone.at(),
                Message.of(TermMentions.class, "no.zone", zone.name()),
                Message.of(TermMentions.class, "no.zone.way")));
        crowded.forEach(group -> error(
                nodes,
                group.at(),
                Message.of(TermMentions.class, "group.crowded", group.name(), TermReader.MOST_DRILLS),
                Message.of(TermMentions.class, "group.crowded.way")));
        unknown(nodes, people, roster, Message.of(TermMentions.class, "not.on.roster"));
        unknown(nodes, taught, known.keySet(), Message.of(TermMentions.class, "no.drill.or.set"));
        Set<String> all =
                read.stream().flatMap(group -> group.drills().stream()).collect(Collectors.toSet());
        unknown(nodes, drills, all, Message.of(TermMentions.class, "not.taught"));
        twice(nodes);
        days(nodes);
    }

    private static void unknown(NodeReader nodes, List<Mention> named, Collection<String> known, Message otherwise) {
        for (Mention mention : named) {
            if (!known.contains(mention.name())) {
                error(
                        nodes,
                        mention.at(),
                        Nearest.unknown(mention.name()),
                        Nearest.meant(mention.name(), known).orElse(otherwise));
            }
        }
    }

    private void twice(NodeReader nodes) {
        Set<String> seen = new HashSet<>();
        for (Mention group : groups) {
            if (!group.name().isEmpty() && !seen.add(group.name())) {
                error(
                        nodes,
                        group.at(),
                        Message.of(TermMentions.class, "groups.alike", group.name()),
                        Message.of(TermMentions.class, "groups.alike.way"));
            }
        }
        Set<String> people = new HashSet<>();
        for (Placed one : placed) {
            if (!people.add(one.person().name())) {
                error(
                        nodes,
                        one.person().at(),
                        Message.of(
                                TermMentions.class, "listed.twice", one.person().name()),
                        Message.of(TermMentions.class, "listed.twice.way"));
            }
        }
        List<FieldPath> open = groups.stream()
                .filter(group -> placed.stream().noneMatch(one -> one.group().equals(group)))
                .map(Mention::at)
                .toList();
        open.stream()
                .skip(1)
                .forEach(at -> error(
                        nodes,
                        at,
                        Message.of(TermMentions.class, "second.open.group"),
                        Message.of(TermMentions.class, "second.open.group.way")));
    }

    private void days(NodeReader nodes) {
        Set<String> keys = new HashSet<>();
        Optional<LocalDate> last = Optional.empty();
        for (Day day : days) {
            if (!day.key().isEmpty() && !keys.add(day.key())) {
                error(
                        nodes,
                        day.at().key("key"),
                        Message.of(TermMentions.class, "class.key.twice", day.key()),
                        Message.of(TermMentions.class, "class.key.twice.way"));
            }
            Optional<LocalDate> before = last;
            if (before.isPresent()
                    && day.date().filter(date -> !date.isAfter(before.get())).isPresent()) {
                error(
                        nodes,
                        day.at().key("date"),
                        Message.of(TermMentions.class, "date.order", before.get()),
                        Message.of(TermMentions.class, "date.order.way"));
            }
            last = day.date().or(() -> before);
        }
        Optional<LocalDate> first =
                days.stream().flatMap(day -> day.date().stream()).findFirst();
        exam.filter(day -> day.date().isPresent()
                        && first.isPresent()
                        && !day.date().get().isAfter(first.get()))
                .ifPresent(day -> nodes.findings()
                        .warning(
                                ReadingRule.WRONG_KIND.id(),
                                nodes.places().span(day.at()),
                                Message.of(TermMentions.class, "exam.first"),
                                Message.of(TermMentions.class, "exam.first.way")));
    }

    private static void error(NodeReader nodes, FieldPath at, Message what, Message wayOut) {
        Span span = nodes.places().span(at);
        nodes.findings().error(ReadingRule.UNKNOWN_WORD.id(), span, what, wayOut);
    }
}
