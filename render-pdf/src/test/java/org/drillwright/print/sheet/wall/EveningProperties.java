package org.drillwright.print.sheet.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.Walk;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;

/** What the plan says stands on the paper once, and nothing else does. */
class EveningProperties {

    /** The least type on a wall: set by the design of the sheet, no source. */
    private static final double LEAST = 19;

    @Property(tries = 20)
    void every_cell_of_the_plan_stands_on_the_sheets_once(
            @ForAll @IntRange(min = 2, max = 60) int people,
            @ForAll @IntRange(min = 1, max = 26) int rounds,
            @ForAll @IntRange(min = 0, max = 25) int worked,
            @ForAll SheetSize size,
            @ForAll long seed) {
        PairingPlan plan = Evenings.random(people, rounds, Math.min(worked, rounds - 1), new Random(seed));
        Map<String, String> found = new HashMap<>();
        for (Frame page : Evenings.sheet(plan, size).pages()) {
            ReadBack.isClean(page);
            List<List<Node.Words>> rows = ReadBack.rows(page);
            List<String> heads = rows.get(0).stream()
                    .map(head -> head.lines().get(head.lines().size() - 1).text())
                    .toList();
            for (List<Node.Words> row : rows.subList(1, rows.size())) {
                for (int at = 1; at < row.size(); at++) {
                    String cell = ReadBack.text(row.get(0)) + " in " + heads.get(at);
                    assertEquals(null, found.put(cell, shown(row.get(at))), cell + " stands there twice");
                }
                assertTrue(row.get(0).lines().get(0).size() >= LEAST, "the name is small");
            }
        }
        assertEquals(wanted(plan), found);
    }

    /** Place, sign and an exclamation mark for bold: walk there. */
    private static String shown(Node.Words cell) {
        if (cell.lines().isEmpty()) {
            return "";
        }
        Mark.Text place = cell.lines().get(0);
        boolean bold = place.face() == Face.BOLD;
        assertTrue(place.size() >= (bold ? LEAST : LEAST * 14 / 19 - 0.01), place.text() + " is small");
        return ReadBack.text(cell) + (bold ? "!" : "");
    }

    private static Map<String, String> wanted(PairingPlan plan) {
        Map<String, String> wanted = new HashMap<>();
        List<Round> left =
                plan.rounds().subList(plan.firstPlanned(), plan.rounds().size());
        List<String> people = left.stream()
                .flatMap(round -> round.groups().stream())
                .flatMap(group -> group.people().stream())
                .distinct()
                .toList();
        for (Round round : left) {
            for (String person : people) {
                Optional<Group> before = round.number() == 1
                        ? Optional.empty()
                        : plan.rounds().get(round.number() - 2).groupOf(person);
                wanted.put(
                        person + " in " + round.number(),
                        round.groupOf(person)
                                .map(group -> place(group)
                                        + sign(group)
                                        + (before.filter(was -> was.place() == group.place())
                                                        .isPresent()
                                                ? ""
                                                : "!"))
                                .orElse(""));
            }
        }
        return wanted;
    }

    private static String place(Group group) {
        return group.place() == 0 ? "\u2013" : String.valueOf(group.place());
    }

    private static String sign(Group group) {
        return switch (group.kind()) {
            case PAIR, SOLO, WATCHED -> "";
            case THREE -> " t";
            case BOTH_NEW -> " n";
            // t and n are taken, so Tess has her second letter
            case HELPED ->
                switch (group.helper().orElseThrow()) {
                    case "Tess" -> " e";
                    case "Iris" -> " i";
                    default -> " \u017C";
                };
        };
    }

    @Property(tries = 15)
    void a_slip_says_with_whom_and_where_in_every_round(
            @ForAll @IntRange(min = 2, max = 40) int people,
            @ForAll @IntRange(min = 1, max = 20) int rounds,
            @ForAll SheetSize size,
            @ForAll long seed) {
        PairingPlan plan = Evenings.random(people, rounds, 0, new Random(seed));
        Map<String, String> found = new HashMap<>();
        for (Frame page : Evenings.sheet(plan, size).slips()) {
            ReadBack.isClean(page);
            String person = "";
            for (Node.Words words : ReadBack.words(page)) {
                Mark.Text first = words.lines().get(0);
                if (first.size() == 13) {
                    person = ReadBack.text(words);
                } else if (first.face() == Face.BOLD) {
                    assertEquals(null, found.put(person + " in " + first.text(), ReadBack.text(words)));
                }
            }
        }
        for (Round round : plan.rounds()) {
            for (Group group : round.groups()) {
                for (String one : group.people()) {
                    String said = found.getOrDefault(one + " in " + round.number(), "");
                    Stream.concat(group.people().stream(), group.helper().stream())
                            .filter(other -> !other.equals(one))
                            .forEach(other -> assertTrue(said.contains(other), said));
                    String where = "(place\u00A0|, )" + group.place() + "(,( both)? new)?";
                    assertTrue(group.place() == 0 || said.matches("(?s).*" + where), said);
                    boolean leads =
                            group.people().size() > 1 && group.people().get(0).equals(one);
                    assertEquals(leads, said.contains("\u25CF"), said);
                }
            }
        }
    }

    /** However many posts there are, names stay large, nothing lies on anything, and nobody is lost. */
    @Property(tries = 20)
    void both_formings_find_room(@ForAll @IntRange(min = 2, max = 40) int posts, @ForAll SheetSize size) {
        PairingPlan plan = Evenings.walkedTwice(posts);
        Map<String, String> told = new HashMap<>();
        for (Frame page : Evenings.sheet(plan, size).pages()) {
            ReadBack.isClean(page);
            for (List<Node.Words> row : ReadBack.rows(page)) {
                if (row.get(0).role() == Role.ROW_HEAD) {
                    told.put(ReadBack.text(row.get(0)), ReadBack.text(row.get(1)) + " " + ReadBack.text(row.get(2)));
                    assertTrue(row.get(0).lines().get(0).size() >= LEAST, "the name is small");
                }
            }
        }
        for (Walk walk : plan.walks()) {
            for (String person : walk.people()) {
                String post = walk.line(person) + "\u00A0" + walk.post(person, walk.from());
                assertTrue(told.getOrDefault(person, "").contains(post), person + ": " + told.get(person));
            }
        }
    }

    /** Whoever follows the sheet, line and post, and one post up a round, is where the plan has them. */
    @Property(tries = 20)
    void two_lines_are_told_as_they_walk(
            @ForAll @IntRange(min = 2, max = 40) int posts,
            @ForAll @IntRange(min = 2, max = 20) int rounds,
            @ForAll SheetSize size) {
        PairingPlan plan = Evenings.walked(posts, rounds, 1);
        Map<String, String> told = new HashMap<>();
        for (Frame page : Evenings.sheet(plan, size).pages()) {
            ReadBack.isClean(page);
            for (List<Node.Words> row : ReadBack.rows(page)) {
                assertEquals(null, told.put(ReadBack.text(row.get(0)), ReadBack.text(row.get(1))));
                assertTrue(row.get(0).lines().get(0).size() >= LEAST, "the name is small");
            }
        }
        assertEquals(2 * posts, told.size());
        told.forEach((name, line) -> {
            int first = Integer.parseInt(line.substring(2));
            for (Round round : plan.rounds()) {
                int now = line.startsWith("A") ? first : (first - 1 + round.number() - 1) % posts + 1;
                assertEquals(now, round.groupOf(name).orElseThrow().place());
            }
        });
    }
}
