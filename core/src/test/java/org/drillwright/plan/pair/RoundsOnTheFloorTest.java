package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.rounds.Method;
import org.drillwright.report.plan.ChangeWords;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

/** Where people stand in each round and who walks between them; worked by hand. */
class RoundsOnTheFloorTest {

    private static List<String> rounds(PairingPlan plan) {
        return plan.rounds().stream()
                .map(round -> round.groups().stream()
                        .map(group -> String.join("-", group.people()) + ":" + group.place())
                        .collect(Collectors.joining(" ")))
                .toList();
    }

    private static PairingPlan threeNewAndOne(LeftOver choice) {
        return Classes.of(3, 1).walk().noInstructor().leftOver(choice).rounds(3).plan();
    }

    /** The three who are new stay at posts 1, 2 and 3; B0 begins at post 1 and moves one post up a round. */
    @Test
    void who_is_before_a_gap_joins_a_pair_and_comes_back() {
        PairingPlan plan = threeNewAndOne(LeftOver.SOLO);
        assertEquals(Method.TWO_LINES, plan.method());
        PairingPlan joined = Classes.of(3, 2).walk().noInstructor().rounds(3).plan();
        assertEquals(Method.TWO_LINES, joined.method());
        for (Round round : joined.rounds()) {
            assertEquals(
                    List.of(2, 3),
                    round.groups().stream()
                            .map(group -> group.people().size())
                            .sorted()
                            .toList());
        }
    }

    @Test
    void those_without_a_partner_stand_at_no_place_and_come_last() {
        assertEquals(
                List.of("A0-B0:1 A1:0 A2:0", "B0-A1:2 A0:0 A2:0", "A2-B0:3 A0:0 A1:0"),
                rounds(threeNewAndOne(LeftOver.SOLO)));
    }

    @Test
    void those_who_do_solo_work_are_in_every_round() {
        PairingPlan plan = Classes.of(0, 2).soloists("Zoe", "Yan").rounds(2).plan();
        assertEquals(List.of("B0-B1:1 Zoe:0 Yan:0", "B1-B0:1 Zoe:0 Yan:0"), rounds(plan));
        assertEquals(
                List.of(Group.Kind.PAIR, Group.Kind.SOLO, Group.Kind.SOLO),
                plan.rounds().get(0).groups().stream().map(Group::kind).toList());
    }

    /** Four who know the drill make two lines of two; in the second round the one line has stepped. */
    @Test
    void two_lines_are_told_in_words_from_the_second_round_on() {
        assertEquals(List.of(), Classes.of(0, 4).walk().rounds(1).plan().changes());
        PairingPlan plan = Classes.of(0, 4).walk().rounds(2).plan();
        assertEquals(
                List.of(
                        "Line A stays, from post 1 onwards: B0, B1.",
                        "Line B begins opposite, from post 1 onwards: B2, B3.",
                        "At each change line B moves one post up, from post 1 to post 2 and so on; whoever"
                                + " leaves the last"
                                + " post walks round behind line A to post 1."),
                ChangeWords.of(plan.changes()).stream().map(Message::english).toList());
        assertEquals(List.of(), plan.movers(1));
        assertEquals(Set.of("B2", "B3"), Set.copyOf(plan.movers(2)));
    }

    @Test
    void where_nobody_walks_the_sheet_is_read() {
        assertEquals(
                List.of("At each change everyone reads the sheet."),
                ChangeWords.of(Classes.of(0, 4).rounds(2).plan().changes()).stream()
                        .map(Message::english)
                        .toList());
    }

    /** Of three rounds of two people all join the two, and none joins either with a third who isn't there. */
    @Test
    void meetings_are_counted_round_by_round() {
        PairingPlan plan = Classes.of(0, 2).rounds(3).plan();
        assertEquals(3, plan.meetings("B0", "B1"));
        assertEquals(0, plan.meetings("B0", "Zed"));
    }
}
