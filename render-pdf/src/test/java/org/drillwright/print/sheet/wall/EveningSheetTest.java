package org.drillwright.print.sheet.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.Walk;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EveningSheetTest {

    private static PairingPlan plain(int people, int rounds) {
        List<Round> planned = new ArrayList<>();
        Random chance = new Random(7);
        for (int round = 1; round <= rounds; round++) {
            List<String> order = new ArrayList<>(Evenings.people(people));
            Collections.shuffle(order, chance);
            List<Group> groups = new ArrayList<>();
            for (int at = 0; at + 1 < people; at += 2) {
                groups.add(new Group(Group.Kind.PAIR, at / 2 + 1, order.subList(at, at + 2), Optional.empty()));
            }
            planned.add(new Round(round, "drill-" + (round / 4), groups));
        }
        return PairingPlan.printed(planned, 0, List.of());
    }

    /** The sheets that the design of the evening on one page asks for. */
    @ParameterizedTest
    @CsvSource({
        "24, 14, A4, 1",
        "24, 14, A3, 1",
        "24, 14, LETTER, 1",
        "40, 14, A4, 2",
        "24, 19, A4, 1",
        "24, 20, A4, 2",
        "60, 14, A4, 3",
        "40, 30, A4, 4",
        "2, 1, A4, 1"
    })
    void an_evening_takes_so_many_sheets(int people, int rounds, SheetSize size, int sheets) {
        assertEquals(sheets, Evenings.sheet(plain(people, rounds), size).pages().size());
    }

    @Test
    void slips_of_twenty_four_people_and_fourteen_rounds_are_one_sheet() {
        assertEquals(1, Evenings.sheet(plain(24, 14), SheetSize.A4).slips().size());
    }

    /** Whoever works with the instructor, and pairs of two new ones, need more words than a line of a slip has. */
    @Test
    void long_words_on_slips_take_no_second_sheet() {
        List<Round> rounds = plain(24, 14).rounds().stream()
                .map(round -> new Round(
                        round.number(),
                        round.drill(),
                        round.groups().stream()
                                .flatMap(group -> group.place() < 12
                                        ? Stream.of(new Group(
                                                Group.Kind.WATCHED, group.place(), group.people(), Optional.empty()))
                                        : IntStream.of(0, 1)
                                                .mapToObj(at -> new Group(
                                                        Group.Kind.HELPED,
                                                        12 + at,
                                                        List.of(group.people().get(at)),
                                                        Optional.of(at == 0 ? "instructor" : "Marlow"))))
                                .toList()))
                .toList();
        List<Frame> slips = Evenings.sheet(PairingPlan.printed(rounds, 0, List.of()), SheetSize.A4)
                .slips();
        assertEquals(1, slips.size());
        ReadBack.isClean(slips.get(0));
        String text = ReadBack.text(slips.get(0));
        assertTrue(text.contains("instructor, 12"), text);
        assertTrue(text.contains(", new"), text);
    }

    /** 16 minutes of arc at the eye: ISO 9241-303; the height of capitals is that of DejaVu, 0.729 of the type. */
    @ParameterizedTest
    @CsvSource({"24, 14, A4, true", "24, 14, A3, false", "8, 6, A4, false"})
    void the_foot_says_from_how_far_it_is_read(int people, int rounds, SheetSize size, boolean slips) {
        Frame page = Evenings.sheet(plain(people, rounds), size).pages().get(0);
        double type = ReadBack.rows(page).get(1).get(0).lines().get(0).size();
        double metres = 0.729 * type * 25.4 / 72 / Math.tan(Math.toRadians(16.0 / 60)) / 1000;
        String foot = ReadBack.text(page);
        String said = foot.replaceAll("(?s).*Read from ([0-9.]+) m.*", "$1");
        assertEquals(metres, Double.parseDouble(said), 0.11, foot);
        assertTrue(Double.parseDouble(said) <= metres, foot);
        assertEquals(slips, foot.contains("--slips"), foot);
        assertEquals(slips, metres < 1.5, foot);
    }

    @Test
    void what_is_printed_again_says_from_which_round_and_keeps_its_letters() {
        PairingPlan whole = plain(8, 10);
        Frame page = Evenings.sheet(PairingPlan.printed(whole.rounds(), 4, List.of()), SheetSize.A4)
                .pages()
                .get(0);
        String text = ReadBack.text(page);
        assertTrue(text.startsWith("Wednesday 2026-12-02, from round 5\n"), text);
        assertTrue(text.contains("B Parry of quarte, drill-1"), text);
        assertTrue(text.contains("C Parry of quarte, drill-2"), text);
        assertFalse(text.contains("drill-0"), text);
        assertTrue(text.contains("Plan C31H-J"), text);
    }

    /** Rows are parted by a heavier rule after every fourth. */
    @Test
    void heavy_rules_help_the_eye_along() {
        Frame page = Evenings.sheet(plain(12, 8), SheetSize.A4).pages().get(0);
        List<Double> across = page.backdrop().stream()
                .map(Mark.Line.class::cast)
                .filter(line -> line.y1() == line.y2() && line.x2() - line.x1() > page.width() / 2)
                .map(Mark.Line::width)
                .toList();
        assertEquals(List.of(1.5, 0.5, 0.5, 0.5, 1.5, 0.5, 0.5, 0.5, 1.5, 0.5, 0.5, 0.5, 1.5), across);
        long drills = page.backdrop().stream()
                .map(Mark.Line.class::cast)
                .filter(line -> line.x1() == line.x2() && line.width() == 1.5)
                .count();
        assertEquals(3, drills);
    }

    /** Twelve people in pairs: in each of eight rounds six lead first, and their places are underlined. */
    @Test
    void where_one_leads_first_the_place_is_underlined() {
        Frame page = Evenings.sheet(plain(12, 8), SheetSize.A4).pages().get(0);
        long under = page.backdrop().stream()
                .map(Mark.Line.class::cast)
                .filter(line -> line.y1() == line.y2() && line.x2() - line.x1() < page.width() / 10)
                .count();
        assertEquals(6 * 8, under);
    }

    /** Names as a school may have them: in other scripts, long, alike. */
    @Test
    void long_names_keep_first_name_and_as_many_letters_as_tell_them_apart() {
        List<String> names = List.of(
                "Wilhelmina Oakenfield",
                "Wilhelmina Oxley",
                "Ann Baker",
                "\u0417\u043E\u044F"
                        + " \u041A\u0430\u0442\u0443\u043D\u0438\u043D\u0430-\u0411\u0435\u043B\u043E\u0432\u0430",
                "Bartholomewnicholas");
        Map<String, String> shown = ShortNames.of(names, name -> name.length() > 12);
        assertEquals("Wilhelmina Oa.", shown.get(names.get(0)));
        assertEquals("Wilhelmina Ox.", shown.get(names.get(1)));
        assertEquals(names.get(2), shown.get(names.get(2)));
        assertEquals("\u0417\u043E\u044F \u041A.", shown.get(names.get(3)));
        assertEquals(names.get(4), shown.get(names.get(4)));
    }

    /** A name that nothing shortens goes on in a second line; nobody is lost and nothing lies on anything. */
    @Test
    void a_name_without_end_stays_on_the_sheet() {
        List<Round> rounds = List.of(new Round(
                1,
                "drill",
                List.of(new Group(Group.Kind.PAIR, 1, List.of("Ash", "Lopado".repeat(12)), Optional.empty()))));
        for (SheetSize size : SheetSize.values()) {
            List<Frame> pages = Evenings.sheet(PairingPlan.printed(rounds, 0, List.of()), size)
                    .pages();
            pages.forEach(ReadBack::isClean);
            List<Node.Words> heads = ReadBack.words(pages.get(0)).stream()
                    .filter(words -> words.role() == Role.ROW_HEAD)
                    .toList();
            assertEquals(2, heads.size());
            assertTrue(ReadBack.text(heads.get(1))
                    .replace(" ", "")
                    .replace("\u00AD", "")
                    .contains("Lopado".repeat(12)));
        }
    }

    /** The first two rounds are read, the other four walked: the lines on one sheet, on another the grid of rounds 1 and 2. */
    @Test
    void rounds_that_nobody_walks_are_read_on_another_sheet() {
        List<Frame> pages =
                Evenings.sheet(Evenings.walked(5, 6, 3), SheetSize.A4).pages();
        assertEquals(2, pages.size());
        String lines = ReadBack.text(pages.get(0));
        assertTrue(lines.contains("B moves one post towards the door when I say change"), lines);
        assertTrue(lines.contains("no lines for Parry of quarte, drill-0; read the other sheet"), lines);
        String grid = ReadBack.text(pages.get(1));
        assertTrue(grid.startsWith("Wednesday 2026-12-02, rounds 1 and 2\n"), grid);
        assertEquals(3, ReadBack.rows(pages.get(1)).get(1).size());
    }

    /** Two formings of four: after round 3 two of line A and two of line B change. */
    @Test
    void who_changes_line_is_named() {
        List<Round> rounds = new ArrayList<>(Evenings.walked(4, 3, 1).rounds());
        List<String> stays = List.of("Stays0", "Stays1", "W0", "W1");
        List<String> moves = List.of("Stays2", "Stays3", "W2", "W3");
        List<Group> groups = new ArrayList<>();
        for (int at = 0; at < 4; at++) {
            groups.add(new Group(Group.Kind.PAIR, at + 1, List.of(moves.get(at), stays.get(at)), Optional.empty()));
        }
        rounds.add(new Round(4, "drill-1", groups));
        List<Walk> walks = List.of(Evenings.walked(4, 3, 1).walks().get(0), new Walk(4, 4, stays, moves));
        Frame page = Evenings.sheet(PairingPlan.printed(rounds, 0, walks), SheetSize.A4)
                .pages()
                .get(0);
        String text = ReadBack.text(page);
        assertTrue(
                text.replace('\n', ' ')
                        .contains("After round 3: Stays2, Stays3, W0, W1 change lines; everyone goes to the post"
                                + " for round 4."),
                text);
        assertTrue(text.contains("A leads first in odd rounds, B in even ones"), text);
        List<String> drawn = figures(page.content());
        assertEquals(2, drawn.size());
        assertTrue(drawn.get(0).contains("from post 1 onwards: Stays0, Stays1, Stays2, Stays3."), drawn.get(0));
        assertTrue(drawn.get(1).contains("from post 1 onwards: Stays0, Stays1, W0, W1."), drawn.get(1));
        assertTrue(text.contains("\nRounds 1 to 3\n") && text.contains("\nRound 4\n"), text);
        String slips = ReadBack.text(Evenings.sheet(PairingPlan.printed(rounds, 0, walks), SheetSize.A4)
                .slips()
                .get(0));
        assertTrue(slips.contains("B\u00A01, A\u00A03 from round\u00A04"), slips);
        assertTrue(slips.contains("post\u00A0"), slips);
    }

    private static List<String> figures(List<Node> nodes) {
        return nodes.stream()
                .flatMap(node -> node instanceof Node.Group group
                        ? figures(group.parts()).stream()
                        : node instanceof Node.Figure figure ? Stream.of(figure.alternative()) : Stream.of())
                .toList();
    }

    /** By hand: the instructor has posts 1 and 2 in rounds 1 and 3 and post 3 in round 2, Marlow the others. */
    @Test
    void who_watches_which_places_stands_on_the_wall() {
        List<Round> rounds = new ArrayList<>();
        for (int round = 1; round <= 3; round++) {
            List<Group> groups = new ArrayList<>();
            for (int place = 1; place <= 3; place++) {
                boolean instructor = (round % 2 == 1) == place < 3;
                List<String> two = List.of("P" + place, "Q" + (place + round) % 3);
                groups.add(new Group(
                        Group.Kind.WATCHED,
                        place,
                        two,
                        Optional.empty(),
                        Optional.of(instructor ? "instructor" : "Marlow"),
                        Optional.empty()));
            }
            rounds.add(new Round(round, "drill", groups));
        }
        PairingPlan plan = PairingPlan.printed(rounds, 0, List.of());
        assertEquals(
                List.of(
                        "Rounds 1 and 3: the instructor watches places 1 and 2, Marlow 3.",
                        "Round 2: Marlow watches places 1 and 2, the instructor 3."),
                Supervision.sentences(plan, PlaceKind.PLACE, Naming.full(), WallTexts.in(Language.ENGLISH)));
        String text =
                ReadBack.text(Evenings.sheet(plan, SheetSize.A4).pages().get(0)).replace('\n', ' ');
        assertTrue(text.contains("Round 2: Marlow watches places 1 and 2, the instructor 3."), text);
    }
}
