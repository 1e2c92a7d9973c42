package org.drillwright.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillwright.mark.PrintRecord.Reading;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintRecordTest {

    private static final PrintMark MARK = new PrintMark("7K3MP9RX");
    private static final Printed PARRY =
            new Printed(LocalDate.of(2026, 3, 1), MARK, "parry-of-quarte", CardSize.INDEX_3X5, Optional.empty());
    private static final String TEXT = "date,mark,drill,size\n2026-03-01,7K3M-P9RX,parry-of-quarte,3x5\n";

    @Test
    void is_written_and_read_as_lines_of_four_values() {
        PrintRecord record = PrintRecord.EMPTY.with(List.of(PARRY));
        assertEquals(TEXT, record.text());
        assertEquals(new Reading.Done(record, false), PrintRecord.read(TEXT));
        assertEquals(new Reading.Done(record, false), PrintRecord.read("\uFEFF" + TEXT.replace("\n", "\r\n")));
    }

    /** RFC 4180, 2.6 and 2.7. */
    @Test
    void an_id_with_commas_and_quotation_marks_stands_between_quotation_marks() {
        Printed odd = new Printed(LocalDate.of(2026, 3, 1), MARK, "one, \"two\"", CardSize.A6, Optional.empty());
        String text = PrintRecord.EMPTY.with(List.of(odd)).text();
        assertTrue(text.endsWith("2026-03-01,7K3M-P9RX,\"one, \"\"two\"\"\",a6\n"), text);
        assertEquals(new Reading.Done(new PrintRecord(List.of(odd)), false), PrintRecord.read(text));
    }

    /** Whatever is torn off the end, what is left is a beginning of what was written. */
    @Test
    void no_torn_line_is_ever_read_as_another() {
        Printed second =
                new Printed(LocalDate.of(2026, 4, 1), MARK, "parry-of-sixte", CardSize.WALL_A4, Optional.empty());
        String text = PrintRecord.EMPTY.with(List.of(PARRY, second)).text();
        List<Printed> all = List.of(PARRY, second);
        for (int end = 0; end <= text.length(); end++) {
            Reading.Done done = (Reading.Done) PrintRecord.read(text.substring(0, end));
            List<Printed> lines = done.record().lines();
            assertEquals(all.subList(0, lines.size()), lines, text.substring(0, end));
        }
    }

    @Test
    void a_torn_last_line_is_told() {
        assertTrue(((Reading.Done) PrintRecord.read(TEXT + "2026-04-01,7K")).torn());
        assertFalse(((Reading.Done) PrintRecord.read(TEXT.strip())).torn());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "name,level\n",
                "date;mark;drill;size\n",
                "date,mark,drill,size\n01/03/2026,7K3M-P9RX,parry,a6\n",
                "date,mark,drill,size\n2026-03-01,7K3M-P9R,parry,a6\n2026-03-01,7K3M-P9RX,parry,a6\n",
                "date,mark,drill,size\n2026-03-01,7K3M-P9RX,parry,a6,more\n"
            })
    void another_file_is_no_record(String text) {
        assertTrue(PrintRecord.read(text) instanceof Reading.Foreign);
    }

    @Test
    void older_marks_are_told_once_a_size_as_printed_last() {
        PrintMark current = new PrintMark("XXXXXXXX");
        Printed again =
                new Printed(LocalDate.of(2026, 5, 1), MARK, "parry-of-quarte", CardSize.INDEX_3X5, Optional.empty());
        Printed now =
                new Printed(LocalDate.of(2026, 6, 1), current, "parry-of-quarte", CardSize.INDEX_3X5, Optional.empty());
        PrintRecord record = PrintRecord.EMPTY.with(List.of(PARRY, again, now));
        assertEquals(List.of(again), record.older("parry-of-quarte", current, Optional.empty()));
        assertTrue(record.has(current, CardSize.INDEX_3X5));
        assertFalse(record.has(current, CardSize.A6));
    }

    @Test
    void a_card_in_another_language_has_a_line_of_its_own() {
        Printed french = new Printed(
                LocalDate.of(2026, 5, 1),
                new PrintMark("XXXXXXXX"),
                "parry-of-quarte",
                CardSize.INDEX_3X5,
                Optional.of(new Language("fr")));
        PrintRecord record = PrintRecord.EMPTY.with(List.of(PARRY, french));
        assertEquals("""
                date,mark,drill,size,language
                2026-03-01,7K3M-P9RX,parry-of-quarte,3x5,
                2026-05-01,XXXX-XXXX,parry-of-quarte,3x5,fr
                """, record.text());
        assertEquals(new Reading.Done(record, false), PrintRecord.read(record.text()));
        PrintMark other = new PrintMark("YYYYYYYY");
        assertEquals(List.of(french), record.older("parry-of-quarte", other, french.language()));
        assertEquals(List.of(PARRY), record.older("parry-of-quarte", other, Optional.empty()));
    }
}
