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
import org.drillwright.model.SheetSize;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
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
        return PairingPlan.printed(planned, 0);
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
    void anEveningTakesSoManySheets(int people, int rounds, SheetSize size, int sheets) {
        assertEquals(sheets, Evenings.sheet(plain(people, rounds), size).pages().size());
    }

    @Test
    void slipsOfTwentyFourPeopleAndFourteenRoundsAreOneSheet() {
        assertEquals(1, Evenings.sheet(plain(24, 14), SheetSize.A4).slips().size());
    }

    /** 16 minutes of arc at the eye: ISO 9241-303; the height of capitals is that of DejaVu, 0.729 of the type. */
    @ParameterizedTest
    @CsvSource({"24, 14, A4, true", "24, 14, A3, false", "8, 6, A4, false"})
    void theFootSaysFromHowFarItIsRead(int people, int rounds, SheetSize size, boolean slips) {
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
    void whatIsPrintedAgainSaysFromWhichRoundAndKeepsItsLetters() {
        PairingPlan whole = plain(8, 10);
        Frame page = Evenings.sheet(PairingPlan.printed(whole.rounds(), 4), SheetSize.A4)
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
    void heavyRulesHelpTheEyeAlong() {
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
    void whereOneLeadsFirstThePlaceIsUnderlined() {
        Frame page = Evenings.sheet(plain(12, 8), SheetSize.A4).pages().get(0);
        long under = page.backdrop().stream()
                .map(Mark.Line.class::cast)
                .filter(line -> line.y1() == line.y2() && line.x2() - line.x1() < page.width() / 10)
                .count();
        assertEquals(6 * 8, under);
    }

    /** Names as a school may have them: in other scripts, long, alike. */
    @Test
    void longNamesKeepFirstNameAndAsManyLettersAsTellThemApart() {
        List<String> names = List.of(
                "Wilhelmina Oakenfield",
                "Wilhelmina Oxley",
                "Ann Baker",
                "\u0417\u043E\u044F \u041A\u0430\u0442\u0443\u043D\u0438\u043D\u0430-\u0411\u0435\u043B\u043E\u0432\u0430",
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
    void aNameWithoutEndStaysOnTheSheet() {
        List<Round> rounds = List.of(new Round(
                1,
                "drill",
                List.of(new Group(Group.Kind.PAIR, 1, List.of("Ash", "Lopado".repeat(12)), Optional.empty()))));
        for (SheetSize size : SheetSize.values()) {
            List<Frame> pages =
                    Evenings.sheet(PairingPlan.printed(rounds, 0), size).pages();
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

    /** One pair that stands elsewhere once, and nobody can be told to walk. */
    @Test
    void aPlanThatIsNotWalkedIsNotToldAsAWalk() {
        PairingPlan walked = Evenings.walked(5, 4, -1);
        List<Round> rounds = new ArrayList<>(walked.rounds());
        List<Group> groups = new ArrayList<>(rounds.get(3).groups());
        Group one = groups.get(0);
        Group other = groups.get(1);
        groups.set(0, new Group(one.kind(), 2, one.people(), one.helper()));
        groups.set(1, new Group(other.kind(), 1, other.people(), other.helper()));
        rounds.set(3, new Round(4, "drill-1", groups));
        assertTrue(TwoLines.of(walked).isPresent());
        assertTrue(TwoLines.of(PairingPlan.printed(rounds, 0)).isEmpty());
        assertTrue(TwoLines.of(PairingPlan.printed(walked.rounds(), 1)).isEmpty());
    }
}
