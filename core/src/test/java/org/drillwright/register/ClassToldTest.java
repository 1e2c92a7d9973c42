package org.drillwright.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.drillwright.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A class is told, told otherwise, and told once more: the record is only added to, and what stands in the end is what was
 * said last. The figures of the evening are counted by hand.
 */
class ClassToldTest {

    private static final String HEADING = "date,person,drill,event,with\n";

    /** {@code Ash} was there; {@code Ash-Bo} worked together. */
    private static List<Entry> entries(String text) {
        List<Entry> entries = new ArrayList<>();
        for (String word : text.isBlank() ? new String[0] : text.strip().split(" ")) {
            String[] names = word.split("-");
            entries.add(
                    names.length == 1
                            ? Entry.attended(Told.DAY, names[0])
                            : Entry.workedWith(Told.DAY, names[0], "thrust", names[1]));
        }
        return entries;
    }

    /** What stands, as a count of each fact told from either side. */
    private static Map<Entry, Integer> stands(String record) {
        return counted(Told.read(record).history().entries());
    }

    private static Map<Entry, Integer> counted(List<Entry> entries) {
        Map<Entry, Integer> counts = new HashMap<>();
        entries.forEach(entry -> counts.merge(entry.plain(), 1, Integer::sum));
        return counts;
    }

    /**
     * Round 1 Ash-Max Bo-Oz, round 2 Ash-Oz Bo-Max. Recorded; again; only round 1; besides Oz never there; then all of it
     * after all.
     */
    @Test
    void an_evening_corrected_back_and_forth() {
        String all = "Ash Bo Max Oz Ash-Max Bo-Oz Ash-Oz Bo-Max";
        String first = "Ash Bo Max Oz Ash-Max Bo-Oz";
        String[] said = {all, all, first, "Ash Bo Max Ash-Max", all, all};
        int[] told = {8, 0, 0, 0, 4, 0};
        int[] takenBack = {0, 0, 2, 2, 0, 0};
        String record = "";
        for (int at = 0; at < said.length; at++) {
            Added added = Told.added(record, "tonight", entries(said[at]));
            String more = added.text();
            assertEquals(told[at], added.told(), "told at " + at);
            assertEquals(takenBack[at], added.takenBack(), "taken back at " + at);
            assertEquals(
                    more.isEmpty() ? 0 : told[at] + takenBack[at] + (at == 0 ? 3 : 2),
                    more.lines().count());
            record = record + more;
            assertEquals(counted(entries(said[at])), stands(record));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // said by the class; then by hand; then by the class again, and what stands
                "Ash Bo Ash-Bo | 2026-09-14,Cy,,attended,                        | Ash Bo Ash-Bo | Ash Bo Cy Ash-Bo",
                "Ash Bo Ash-Bo | 2026-09-14,Ash,thrust,taken back: worked with,Bo | Ash Bo Ash-Bo | Ash Bo",
                "Ash Bo        | 2026-09-14,Bo,thrust,worked with,Ash             | Ash Bo Ash-Bo | Ash Bo Ash-Bo",
                "Ash Bo        | 2026-09-14,Bo,thrust,worked with,Ash             | Ash           | Ash Ash-Bo",
                "Ash Bo Ash-Bo Ash-Bo | 2026-09-14,Bo,thrust,worked with,Ash      | Ash Bo Ash-Bo | Ash Bo Ash-Bo"
            })
    void lines_typed_by_hand_stay_as_they_stand(String first, String byHand, String again, String stands) {
        String record = Told.appended("", entries(first)) + byHand + "\n";
        record += Told.appended(record, entries(again));
        assertEquals(counted(entries(stands)), stands(record), record);
        assertEquals("", Told.appended(record, entries(again)));
    }

    @Test
    void two_classes_of_one_day_leave_each_other_alone() {
        String record = Told.appended("", "children", entries("Ash Bo Ash-Bo"));
        record += Told.appended(record, "grown-ups", entries("Cy"));
        Added more = Told.added(record, "children", entries("Ash"));
        assertEquals(2, more.takenBack());
        assertEquals(counted(entries("Ash Cy")), stands(record + more.text()));
    }

    @Test
    void a_sign_off_is_only_added_and_taken_back_only_by_name() {
        Entry signed = Entry.signedOff(Told.DAY, "Ash", "thrust");
        ClassTold with = new ClassTold(Told.DAY, "tonight", "none", entries("Ash"), List.of(signed), List.of(), false);
        String record = RecordWriter.appended(Told.read(""), with).text();
        assertEquals("", Told.appended(record, entries("Ash")));
        ClassTold back = new ClassTold(Told.DAY, "tonight", "none", entries("Ash"), List.of(), List.of(signed), false);
        String more = RecordWriter.appended(Told.read(record), back).text();
        assertEquals("2026-09-14,Ash,thrust,taken back: signed off,\n", Told.bare(more));
        assertEquals(counted(entries("Ash")), stands(record + more));
    }

    @Test
    void a_sign_off_by_itself_leaves_what_was_worked_as_it_stands() {
        Entry signed = Entry.signedOff(Told.DAY, "Ash", "thrust");
        ClassTold only =
                new ClassTold(Told.DAY, "tonight", "none", entries("Ash Bo Ash-Bo"), List.of(signed), List.of(), true);
        assertEquals(4, RecordWriter.appended(Told.read(""), only).told(), "nothing stood yet: all of the class");
        String corrected = Told.appended("", entries("Ash Cy Ash-Cy"));
        Added more = RecordWriter.appended(Told.read(corrected), only);
        assertEquals("2026-09-14,Ash,thrust,signed off,\n", Told.bare(more.text()));
        assertTrue(more.again());
    }

    @Test
    void a_batch_that_was_cut_short_is_said_counts_for_nothing_and_is_told_again() {
        String whole = Told.appended("", entries("Ash Bo Ash-Bo"));
        String cut = whole.substring(0, whole.indexOf("2026-09-14,Bo"));
        Finding said = Told.read(cut).findings().get(0);
        assertEquals("record-batch-broken", said.rule());
        assertEquals(
                "This batch of 3 lines is incomplete: none of it was counted.",
                said.what().english());
        assertEquals("To record it again: record tonight", said.wayOut().english());
        assertEquals(Map.of(), stands(cut));
        String more = Told.appended(cut, entries("Ash Bo Ash-Bo"));
        assertEquals(counted(entries("Ash Bo Ash-Bo")), stands(cut + more));
    }

    @Test
    void what_takes_back_too_much_is_said_where_it_stands() {
        ReadHistory read = Told.read(HEADING + "2026-09-14,Ash,,taken back: attended,\n");
        assertEquals("record-takes-back-nothing", read.findings().get(0).rule());
        assertEquals(2, read.findings().get(0).position().line());
        assertTrue(read.history().entries().isEmpty());
    }

    /** Two machines told the same class the same way and their files were joined: it counts once. */
    @Test
    void the_same_batch_from_two_machines_counts_once() {
        String one = Told.appended("", entries("Ash Bo Ash-Bo"));
        String other = Told.appended("", entries("Ash Bo Ash-Bo")).substring(HEADING.length());
        assertEquals(stands(one), stands(one + other));
    }

    /** Lives of an evening: said anew, plugs pulled at any byte, files joined; in the end what was said last stands. */
    @Test
    void many_lives_of_an_evening() {
        Random chance = new Random(20260914);
        List<String> facts = Arrays.asList("Ash Bo Cy Ash-Bo Bo-Cy Ash-Cy Cy-instructor".split(" "));
        for (int life = 0; life < 300; life++) {
            String record = HEADING;
            String other = "";
            List<Entry> last = List.of();
            for (int time = 0; time < 6; time++) {
                StringBuilder said = new StringBuilder();
                for (String fact : facts) {
                    said.append((fact + " ").repeat(Math.max(0, chance.nextInt(4) - 1)));
                }
                last = entries(said.toString().replaceAll("(Ash|Bo|Cy) \\1 ", "$1 "));
                String more = Told.appended(record, last);
                if (chance.nextInt(3) == 0) {
                    record += more.substring(0, chance.nextInt(more.length() + 1));
                    record += Told.appended(record, last);
                } else {
                    record += more;
                }
                other = chance.nextInt(4) == 0 ? record : other;
            }
            assertEquals(counted(last), stands(record), record);
            assertEquals("", Told.appended(record, last));
            String joined = record + (other.isEmpty() ? "" : other.substring(other.indexOf('\n') + 1));
            assertEquals(counted(last), stands(joined), joined);
        }
    }
}
