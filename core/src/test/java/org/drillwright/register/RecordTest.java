package org.drillwright.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The record is appended to and never rewritten; a bad line is told of and spoils no other. */
class RecordTest {

    private static final String HEADING = "date,person,drill,event,with\n";
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private static ReadHistory read(String text) {
        return RecordReader.read(
                "record.csv",
                text.getBytes(StandardCharsets.UTF_8),
                RecordAround.of(List.of("Ash", "Bo", "Cy"), List.of("thrust", "parry")));
    }

    private static List<String> places(ReadHistory read) {
        return read.findings().stream()
                .map(finding -> finding.rule() + " " + finding.position().line() + ":"
                        + finding.position().column())
                .toList();
    }

    @Test
    void each_event_is_read() {
        ReadHistory read = read(HEADING + """
                2026-09-14,Ash,,attended,
                2026-09-14,Ash,thrust,worked with,Bo
                2026-09-14,Cy,thrust,worked with,instructor
                2026-09-14,Ash,thrust,signed off,
                """);
        assertEquals(List.of(), read.findings());
        assertEquals(
                List.of(
                        Entry.attended(DAY, "Ash"),
                        Entry.workedWith(DAY, "Ash", "thrust", "Bo"),
                        Entry.workedWith(DAY, "Cy", "thrust", "instructor"),
                        Entry.signedOff(DAY, "Ash", "thrust")),
                read.history().entries());
        assertEquals(Set.of("thrust"), read.history().signedOff("Ash"));
        assertEquals(History.NONE, read.history().before(DAY));
    }

    @Test
    void a_torn_last_line_counts_for_nothing_and_the_next_entry_begins_a_new_one() {
        String torn = HEADING + "2026-09-14,Ash,thrust,signed off,\n2026-09-14,Bo,thr";
        ReadHistory read = read(torn);
        assertEquals(List.of("record-line-broken 3:1"), places(read));
        assertEquals(
                List.of(Entry.signedOff(DAY, "Ash", "thrust")), read.history().entries());
        String more = Told.appended(torn, List.of(Entry.attended(DAY, "Cy")));
        assertEquals("\n2026-09-14,Cy,,attended,\n", Told.bare(more));
        assertEquals(List.of("record-line-broken 3:1"), places(read(torn + more)));
        assertEquals(2, read(torn + more).history().entries().size());
    }

    @Test
    void the_same_fact_told_from_either_side_counts_once() {
        ReadHistory read = read(HEADING + """
                2026-09-14,Ash,thrust,worked with,Bo
                2026-09-14,Bo,thrust,worked with,Ash
                2026-09-14,Ash,thrust,worked with,Bo
                """);
        assertEquals(List.of("record-line-twice 3:1", "record-line-twice 4:1"), places(read));
        assertEquals(1, read.history().meetings().size());
    }

    @Test
    void names_that_nobody_has_are_shown_where_they_stand() {
        ReadHistory read = read(HEADING + "2026-09-14,Ahs,thrust,worked with,Bo\n2026-09-14,Ash,thurst,signed off,\n");
        assertEquals(List.of("record-unknown-name 2:12", "record-unknown-name 3:16"), places(read));
        assertEquals(
                "Did you mean 'Ash'? The line was kept as it is.",
                read.findings().get(0).wayOut().english());
        assertEquals(2, read.history().entries().size());
    }

    @Test
    void lines_that_make_no_sense_are_told_of_one_by_one() {
        ReadHistory read = read(HEADING + """
                in September,Ash,thrust,signed off,
                2026-09-14,Ash,thrust,dreamt of,
                2026-09-14,Ash,,signed off,
                2026-09-14,Ash,thrust
                2026-09-14,,thrust,signed off,
                2026-09-14,Ash,thrust,worked with,
                """);
        assertEquals(
                List.of(
                        "record-wrong-word 2:1",
                        "record-wrong-word 3:23",
                        "record-line-broken 4:1",
                        "record-line-broken 5:1",
                        "record-line-broken 6:1",
                        "record-line-broken 7:1"),
                places(read));
        assertTrue(read.history().entries().isEmpty());
    }

    @Test
    void bytes_that_are_no_text_spoil_their_own_line() {
        byte[] bytes = (HEADING + "2026-09-14,Ash,thrust,signed off,\n2026-09-14,Zoé,,attended,\n"
                        + "2026-09-14,?,thrust,signed off,\n")
                .getBytes(StandardCharsets.UTF_8);
        bytes[bytes.length - 21] = (byte) 0xFF;
        ReadHistory read =
                RecordReader.read("record.csv", bytes, RecordAround.of(List.of("Ash", "Zoé"), List.of("thrust")));
        assertEquals(List.of("record-line-broken 4:1"), places(read));
        assertEquals(2, read.history().entries().size());
    }

    @Test
    void another_table_is_not_taken_for_a_record() {
        ReadHistory read = read("name,level\nAsh,beginner\n");
        Finding finding = read.findings().get(0);
        assertEquals("record-unreadable", finding.rule());
        assertTrue(read.history().entries().isEmpty());
    }

    @Test
    void a_first_entry_writes_the_heading_and_known_facts_are_not_written_again() {
        List<Entry> entries = List.of(Entry.workedWith(DAY, "Ash", "thrust", "Bo"));
        List<Entry> mirrored = List.of(Entry.workedWith(DAY, "Bo", "thrust", "Ash"));
        String first = Told.appended("", entries);
        assertEquals(HEADING + "2026-09-14,Ash,thrust,worked with,Bo\n", Told.bare(first));
        assertEquals("", Told.appended(first, mirrored));
    }

    @Test
    void a_record_from_a_spreadsheet_with_semicolons_is_read() {
        assertEquals(
                List.of(Entry.signedOff(DAY, "Ash", "thrust")),
                read("date;person;drill;event;with\r\n2026-09-14;Ash;thrust;signed off;\r\n")
                        .history()
                        .entries());
    }

    @Test
    void a_record_with_semicolons_is_carried_on_with_semicolons() {
        String saved = "date;person;drill;event;with\r\n2026-09-14;Ash;thrust;signed off;\r\n";
        String more = Told.appended(saved, List.of(Entry.attended(DAY, "Bo")));
        assertEquals("2026-09-14;Bo;;attended;\n", Told.bare(more));
        assertEquals(2, read(saved + more).history().entries().size());
    }

    @Test
    void a_line_cut_short_inside_quotes_spoils_only_itself() {
        String torn = HEADING + "2026-09-14,Ash,thrust,signed off,\n2026-09-14,\"B";
        String more = Told.appended(torn, List.of(Entry.attended(DAY, "Cy")));
        assertEquals("\n2026-09-14,Cy,,attended,\n", Told.bare(more));
        assertEquals(2, read(torn + more).history().entries().size());
    }

    /** By RFC 4180 the quote would go on to the next one, and take every line between with it. */
    @Test
    void a_quote_left_open_in_the_middle_spoils_only_its_own_line() {
        ReadHistory read = read(HEADING
                + "2026-09-14,\"Ash,thrust,signed off,\n2026-09-14,Bo,,attended,\n2026-09-14,\"Cy\",,attended,\n");
        assertEquals(List.of("record-line-broken 2:1"), places(read));
        assertEquals(
                "A quotation mark in this line has no partner.",
                read.findings().get(0).what().english());
        assertEquals(
                List.of(Entry.attended(DAY, "Bo"), Entry.attended(DAY, "Cy")),
                read.history().entries());
    }

    @Test
    void a_record_of_nothing_but_the_mark_of_unicode_gets_its_heading() {
        String more = Told.appended("\uFEFF", List.of(Entry.attended(DAY, "Cy")));
        assertEquals(HEADING + "2026-09-14,Cy,,attended,\n", Told.bare(more));
    }

    @Test
    void a_record_of_nothing_but_separators_is_carried_on_with_them() {
        String begun = "\uFEFF\r;";
        String more = Told.appended(begun, List.of(Entry.attended(DAY, "Cy")));
        assertEquals("\n" + HEADING.replace(',', ';') + "2026-09-14;Cy;;attended;\n", Told.bare(more));
        assertEquals(1, read((begun + more).substring(1)).history().entries().size());
    }

    @Test
    void findings_of_one_line_stand_in_the_order_of_its_cells() {
        assertEquals(
                List.of("record-unknown-name 2:12", "record-unknown-name 2:16", "record-unknown-name 2:35"),
                places(read(HEADING + "2026-09-14,Ahs,thurst,worked with,Ob\n")));
    }

    /** What a German, a French and a US spreadsheet make of it: common practice, no source. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "windows-1252 | date;person;drill;event;with\\r\\n14.09.2026;Zoé;thrust;signed off;\\r\\n",
                "windows-1252 | Datum;Person;Übung;Ereignis;Partner\\r\\n14.09.2026;Zoé;thrust;signed off;\\r\\n",
                "UTF-8 | date;person;drill;event;with\\r\\n14/09/2026;Zoé;thrust;signed off\\r\\n",
                "UTF-8 | date,person,drill,event,with\\r\\n9/14/2026,Zoé,thrust,Signed off,\\r\\n",
                "UTF-16LE | \\uFEFFdate\\tperson\\tdrill\\tevent\\twith\\r\\n9/14/2026\\tZoé\\tthrust\\tsigned"
                        + " off\\t\\r\\n",
                "UTF-8 | sep=;\\r\\nwith;event;drill;person;date;;\\r\\n;signed off;thrust;Zoé;2026-09-14;;\\r\\n"
            })
    void a_record_that_a_spreadsheet_saved(String charset, String text) {
        String table = text.replace("\\r", "\r")
                .replace("\\n", "\n")
                .replace("\\t", "\t")
                .replace("\\uFEFF", "\uFEFF");
        ReadHistory read = RecordReader.read(
                "record.csv",
                table.getBytes(Charset.forName(charset)),
                RecordAround.of(List.of("Zoé"), List.of("thrust")));
        assertEquals(
                List.of(Entry.signedOff(DAY, "Zoé", "thrust")),
                read.history().entries(),
                read.findings().toString());
        assertTrue(read.findings().stream().allMatch(finding -> finding.severity() == Severity.NOTE));
        assertEquals(charset.equals("UTF-8"), read.form().takesLines());
    }

    @Test
    void lines_are_added_in_the_order_of_the_columns_that_stand_there() {
        String saved = "Note;event;with;person;date;drill;\n;attended;;Ash;2026-09-14;;\nx;;;;;;\n";
        String more = Told.appended(saved, List.of(Entry.workedWith(DAY, "Bo", "thrust", "Ash")));
        assertEquals(
                ";worked with;Ash;Bo;2026-09-14;thrust;\n",
                more.lines().skip(1).findFirst().orElse("") + "\n");
        assertEquals(2, read(saved + more).history().entries().size());
    }

    @Test
    void what_stands_in_many_lines_alike_is_told_once() {
        ReadHistory read = read(HEADING + "2026-09-14,Ahs,thrust,signed off,\n".repeat(2)
                + "2026-09-14,Ash,02-Jan,signed off,\n2026-09-14,Bo,02-Jan,signed off,\n");
        assertEquals(
                List.of("record-unknown-name 2:12", "record-line-twice 3:1", "record-unknown-name 4:16"), places(read));
        assertEquals(
                "There is no person 'Ahs' now. It is on 2 lines.",
                read.findings().get(0).what().english());
        assertEquals(
                "'02-Jan' is not a drill: a spreadsheet has made a date out of a name. It is on 2 lines.",
                read.findings().get(2).what().english());
        assertEquals(1, read.history().entries().size());
    }

    /** Nothing of them counts, not even that a batch lacks its end. */
    @Test
    void of_dates_that_can_be_read_in_two_ways_there_is_one_finding() {
        ReadHistory read = read(HEADING + """
                03/04/2026,,tonight,batch 5f10c2aa 1,none
                03/04/2026,Ash,,attended,
                03/04/2026,,tonight,done 5f10c2aa,none
                """);
        assertEquals(List.of("record-wrong-word 2:1"), places(read));
        assertEquals(
                "'03/04/2026' could be 2026-04-03 (day first) or 2026-03-04 (month first). None of these 3 lines was"
                        + " counted.",
                read.findings().get(0).what().english());
        assertEquals(
                "Say which: tables: {dates: day-first} or tables: {dates: month-first} in school.yaml.",
                read.findings().get(0).wayOut().english());
    }
}
