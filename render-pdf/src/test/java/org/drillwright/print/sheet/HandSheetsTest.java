package org.drillwright.print.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.check.Subject;
import org.drillwright.model.Drill;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.partner.TwoSession;
import org.drillwright.plan.progress.Progress;
import org.drillwright.plan.progress.Standing;
import org.drillwright.plan.roster.Hall;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.roster.Timing;
import org.drillwright.print.Drills;
import org.drillwright.print.Example;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.pdf.Family;
import org.drillwright.register.History;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Sheets for the hand: who knows what, the hall, a session for two; black only, in the lesson sheet's sizes of type. */
class HandSheetsTest {

    private static final Family FACES = Family.dejaVu();

    /** Of the lesson sheet, and the places in a hall. */
    private static final Set<Double> SIZES = Set.of(20.0, 16.0, 13.0, 11.5, 10.0, 8.5, 22.0);

    private static List<Drill> drills() {
        return Example.drills().stream().map(Subject::drill).toList();
    }

    private static Progress progress(int people) {
        List<Person> all = IntStream.range(0, people)
                .mapToObj(at -> Person.named("Person " + (char) ('A' + at % 26) + at / 26))
                .toList();
        Roster roster = new Roster(all, List.of(), List.of());
        return Progress.of(drills(), roster, Knowledge.of(roster, History.NONE));
    }

    private static void inTheHand(List<Frame> pages) {
        for (Frame page : pages) {
            for (Mark.Text text : Flat.texts(page)) {
                assertEquals(Ink.BLACK, text.ink(), text.text());
                assertTrue(SIZES.contains(text.size()), () -> text.text() + " in " + text.size());
                assertTrue(text.x() >= page.clear() - 0.01
                        && Flat.box(text).right() <= page.width() - page.clear() + 0.01);
            }
            for (Mark mark : page.backdrop()) {
                assertTrue(
                        mark instanceof Mark.Line line && line.ink().equals(Ink.BLACK) && line.width() >= 0.5,
                        mark.toString());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"1, A4", "24, A4", "24, LETTER", "60, A4", "30, A3"})
    void every_person_has_a_row_with_a_sign_for_each_drill(int people, SheetSize size) {
        Progress progress = progress(people);
        List<Frame> pages = ProgressSheet.pages(progress, Naming.full(), size, Drills.SCHOOL, FACES);
        inTheHand(pages);
        List<Node.Words> words =
                pages.stream().flatMap(page -> Flat.words(page).stream()).toList();
        Map<Role, List<String>> said = words.stream()
                .collect(Collectors.groupingBy(
                        Node.Words::role,
                        Collectors.mapping(
                                one -> one.lines().stream().map(Mark.Text::text).collect(Collectors.joining(" ")),
                                Collectors.toList())));
        assertEquals(progress.people().stream().map(Person::name).toList(), said.get(Role.ROW_HEAD));
        List<String> signs = progress.people().stream()
                .flatMap(person -> progress.drills().stream().map(drill -> progress.standing(person.name(), drill)))
                .map(standing -> standing == Standing.KNOWN ? "\u25A0" : standing == Standing.NEXT ? "\u25A1" : "")
                .toList();
        assertEquals(signs, said.get(Role.CELL));
        for (int at = 0; at < progress.drills().size(); at++) {
            String line = (at + 1) + " " + progress.drills().get(at).title();
            assertTrue(said.get(Role.PARAGRAPH).contains(line), line);
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_hall_has_a_place_in_each_lane_that_is_used(SheetSize size) {
        Floor floor = Floor.of(LaneLayout.of(Hall.of(3300, 1800)), 12);
        List<Frame> pages =
                HallSheet.pages(floor, PairingPlan.printed(List.of(), 0, List.of()), size, Drills.SCHOOL, "", FACES);
        inTheHand(pages);
        Set<String> places = new TreeSet<>();
        for (Mark mark : Flat.figures(pages.get(0)).get(0).marks()) {
            if (mark instanceof Mark.Text text && !text.text().equals("5 m")) {
                places.add(text.text());
            }
        }
        assertEquals(
                IntStream.rangeClosed(1, 12).mapToObj(String::valueOf).collect(Collectors.toCollection(TreeSet::new)),
                places);
    }

    @ParameterizedTest
    @EnumSource
    void a_session_leaves_room_to_write_beside_each_drill(SheetSize size) {
        TwoSession session = new TwoSession(
                "Ash",
                "Dee",
                drills().stream()
                        .limit(4)
                        .map(drill -> new TwoSession.Block(
                                drill.id(), Timing.USUAL.opening(), Timing.USUAL.opening(), "Ash", drill.worksOn()))
                        .toList(),
                Timing.USUAL.opening(),
                6);
        Map<String, Drill> byId = drills().stream().collect(Collectors.toMap(Drill::id, drill -> drill));
        List<Frame> pages = SessionSheet.pages(session, Naming.full(), Drills.SCHOOL, byId, size, FACES);
        inTheHand(pages);
        assertEquals(1, pages.size());
        List<Double> rules = pages.get(0).backdrop().stream()
                .filter(mark -> mark instanceof Mark.Line line && line.y1() == line.y2() && line.x1() < 60)
                .map(mark -> ((Mark.Line) mark).y1())
                .sorted()
                .toList();
        // 11 mm, by hand: the design of the sheet; 31.18 points.
        for (int at = 1; at <= session.blocks().size() + 2; at++) {
            assertTrue(rules.get(at) - rules.get(at - 1) >= 31.18, rules.toString());
        }
    }
}
