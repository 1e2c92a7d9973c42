package org.drillwright.register;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names by their days; worked by hand. */
class MembersTest {

    private static ReadHistory read(String lines, String... people) {
        String text = "date,person,drill,event,with\n"
                + lines.strip().replaceAll(" *& *", "\n").replaceAll("(?m)^", "2026-09-") + "\n";
        return RecordReader.read(
                "record.csv",
                text.getBytes(StandardCharsets.UTF_8),
                RecordAround.of(List.of(people), List.of("thrust")));
    }

    /** Lines of September; who is on the roster; who was there, as they are called now. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "01,Pip,,attended, & 10,Pip,,renamed,Pippa | Pippa | Pippa",
                // The line of the new name stands above those of the old one.
                "10,Pip,,renamed,Pippa & 01,Pip,,attended, | Pippa | Pippa",
                // The old name is somebody else's then.
                "01,Pip,,attended, & 10,Pip,,renamed,Pippa & 11,Pip,,attended, | Pippa Pip | Pippa Pip",
                // On the day itself the order of the lines decides.
                "10,Pip,,attended, & 10,Pip,,renamed,Pippa & 10,Pip,,attended, | Pippa Pip | Pippa Pip",
                // A chain, and a name that came back.
                "01,Pip,,attended, & 10,Pip,,renamed,Pippa & 12,Pippa,,renamed,Phil & 11,Pippa,,attended, | Phil | Phil Phil",
                "01,Pip,,attended, & 10,Pip,,renamed,Pippa & 12,Pippa,,renamed,Pip | Pip | Pip",
                // Two changed names with each other.
                "01,Ash,,attended, & 10,Ash,,renamed,x & 10,Bo,,renamed,Ash & 10,x,,renamed,Bo & 02,Bo,,attended, | Ash Bo | Bo Ash",
                // Told twice, as when files of two machines were joined.
                "01,Pip,,attended, & 10,Pip,,renamed,Pippa & 10,Pip,,renamed,Pippa | Pippa | Pippa"
            })
    void a_name_is_that_of_whoever_had_it_then(String lines, String people, String there) {
        ReadHistory read = read(lines, people.split(" "));
        assertEquals(
                there,
                read.history().entries().stream().map(Entry::person).collect(Collectors.joining(" ")),
                read.findings().toString());
        nothingElseIsSaid(read);
    }

    private static void nothingElseIsSaid(ReadHistory read) {
        assertEquals(
                List.of(),
                read.findings().stream()
                        .filter(finding -> !finding.rule().equals("record-line-twice"))
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10,Pip,,left, | Pip",
                "10,Pip,,left, & 12,Pip,,returned, | ",
                "12,Pip,,returned, & 10,Pip,,left, | ",
                "10,Pip,,left, & 12,Pip,,returned, & 14,Pip,,left, | Pip",
                "10,Pip,,left, & 12,Pip,,renamed,Pippa | Pippa"
            })
    void who_left_and_did_not_return(String lines, String gone) {
        assertEquals(
                gone == null ? Set.of() : Set.of(gone), read(lines).members().gone());
    }

    /** What was done with somebody who left stays, and a name that left may be missing on the roster. */
    @Test
    void the_past_with_who_left_counts() {
        ReadHistory read = read("01,Pip,thrust,worked with,Ash & 10,Pip,,left,", "Ash");
        assertEquals(List.of(), read.findings());
        assertEquals(1, read.history().meetings().size());
    }

    @Test
    void a_line_is_added_once() {
        LocalDate day = LocalDate.of(2026, 9, 10);
        Added once = RecordWriter.told(read("01,Ash,,attended,", "Ash"), List.of(Entry.left(day, "Ash")));
        assertEquals("2026-09-10,Ash,,left,\n", once.text());
        assertEquals(Added.NOTHING, RecordWriter.told(read("10,Ash,,left,", "Ash"), List.of(Entry.left(day, "Ash"))));
    }

    /** Names at random, changed at random: each line still speaks of whoever was meant. */
    @Test
    void many_changes_of_names() {
        for (int life = 0; life < 200; life++) {
            Random chance = new Random(life);
            List<String> called = new ArrayList<>(List.of("a", "b", "c"));
            List<Integer> meant = new ArrayList<>();
            List<String> lines = new ArrayList<>();
            for (int day = 10; day < 30; day++) {
                int one = chance.nextInt(3);
                String free = "abcde".substring(chance.nextInt(5)).substring(0, 1);
                if (chance.nextInt(3) == 0 && !called.contains(free)) {
                    lines.add(day + "," + called.get(one) + ",,renamed," + free);
                    called.set(one, free);
                } else {
                    lines.add(day + "," + called.get(one) + ",thrust,signed off,");
                    meant.add(one);
                }
            }
            ReadHistory read = read(String.join("&", lines), called.toArray(String[]::new));
            assertEquals(
                    meant.stream().map(called::get).toList(),
                    read.history().entries().stream().map(Entry::person).toList(),
                    lines.toString());
        }
    }
}
