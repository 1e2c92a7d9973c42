package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.Walk;
import org.drillwright.plan.roster.Naming;

/**
 * The rounds that two lines walk, told by name.
 *
 * @param walks the formings, in their order
 * @param rows one for each person and each helper in a line, by name
 * @param joining for each round in which somebody leaves the lines to join a pair, who does and where
 * @param byLines whether line A always leads first in odd rounds and line B in even ones
 */
record LineRounds(List<Walk> walks, List<Row> rows, Map<Integer, String> joining, boolean byLines) {

    /** Each joins a pair about once, and more would be more to read than a list. */
    private static final int JOINS = 1;

    LineRounds {
        walks = List.copyOf(walks);
        rows = List.copyOf(rows);
    }

    /**
     * Where somebody stands first in each forming.
     *
     * @param posts such as {@code A 3}; a dash for who works alone, empty for who isn't there
     * @param joins whether the person leaves the lines in some round
     */
    record Row(String name, List<String> posts, boolean joins) {
        Row {
            posts = List.copyOf(posts);
        }
    }

    /** The lines, if some walk, and nearly everybody keeps to them. */
    static Optional<LineRounds> of(PairingPlan pairs, Naming names, WallTexts words) {
        if (pairs.walks().stream().noneMatch(walk -> walk.from() < walk.to())) {
            return Optional.empty();
        }
        Map<Integer, String> joining = new TreeMap<>();
        List<String> joined = new ArrayList<>();
        boolean byLines = true;
        for (Walk walk : pairs.walks()) {
            for (Round round : pairs.rounds().subList(walk.from() - 1, walk.to())) {
                for (Group group : round.groups()) {
                    for (String person : group.people()) {
                        if (group.place() > 0 && group.place() != walk.post(person, round.number())) {
                            joined.add(person);
                            String said =
                                    words.text(WallText.JOINS, ByName.called(person, names, words), group.place());
                            joining.merge(round.number(), said, (one, other) -> one + ", " + other);
                        }
                    }
                    byLines &= group.people().size() != 2
                            || walk.line(group.people().get(0)).equals(round.number() % 2 == 1 ? "A" : "B");
                }
            }
        }
        List<String> people = people(pairs, names, words);
        return joined.size() > JOINS * people.size()
                ? Optional.empty()
                : Optional.of(
                        new LineRounds(pairs.walks(), rows(pairs, people, joined, names, words), joining, byLines));
    }

    private static List<String> people(PairingPlan pairs, Naming names, WallTexts words) {
        List<Round> walked = pairs.rounds().stream()
                .filter(round -> pairs.walk(round.number()).isPresent())
                .toList();
        return Stream.concat(
                        ByName.people(walked, names, words).stream(),
                        pairs.walks().stream().flatMap(walk -> walk.people().stream()))
                .distinct()
                .sorted(ByName.order(names, words))
                .toList();
    }

    private static List<Row> rows(
            PairingPlan pairs, List<String> people, List<String> joined, Naming names, WallTexts words) {
        return people.stream()
                .map(person -> new Row(
                        ByName.called(person, names, words),
                        pairs.walks().stream()
                                .map(walk -> post(walk, person, pairs))
                                .toList(),
                        joined.contains(person)))
                .toList();
    }

    private static String post(Walk walk, String person, PairingPlan pairs) {
        if (!walk.line(person).isEmpty()) {
            return walk.line(person) + "\u00A0" + walk.post(person, walk.from());
        }
        return pairs.rounds().get(walk.from() - 1).groupOf(person).isPresent() ? NoteLetters.ALONE : "";
    }

    /** The line of names that stays, post by post. */
    static List<String> staying(Walk walk, Naming names, WallTexts words) {
        return walk.stays().stream()
                .map(person -> person.equals(Walk.REST) ? "" : ByName.called(person, names, words))
                .toList();
    }

    /** Of its rounds, such as {@code 1 to 6}. */
    static String numbers(Walk walk, WallTexts words) {
        return walk.from() == walk.to() ? "" + walk.from() : words.text(WallText.TO, walk.from(), walk.to());
    }
}
