package org.drillwright.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two who train on their own; worked by hand. */
class TogetherTest {

    /** {@code 4 Ash kept} is a line of December. */
    private static Together told(String lines) {
        StringBuilder text = new StringBuilder("date,person,drill,event,with\n");
        for (String line : lines.strip().split(" *& *")) {
            String[] words = line.strip().split(" ", 3);
            String drill = words[2].equals("led first") ? "thrust" : "";
            text.append(LocalDate.of(2026, 12, Integer.parseInt(words[0])))
                    .append("," + words[1] + "," + drill + "," + words[2] + ",")
                    .append(words[1].equals("Ash") ? "Dee\n" : "Ash\n");
        }
        ReadHistory read = RecordReader.read(
                "record.csv",
                text.toString().getBytes(StandardCharsets.UTF_8),
                RecordAround.of(List.of("Ash", "Dee"), List.of("thrust")));
        assertEquals(List.of(), read.findings());
        assertTrue(read.history().entries().isEmpty());
        return read.together();
    }

    private static final String THREE_FRIDAYS =
            "4 Ash agreed & 11 Ash agreed & 18 Dee agreed & 4 Ash kept & 11 Ash kept &"
                    + " 18 Ash did not come & 4 Dee kept & 18 Dee kept";

    /** 4: both kept it. 11: Ash did, and Dee has said nothing for two weeks. 18: they differ. */
    @Test
    void two_kept_of_two_and_one_remembered_differently() {
        Together together = told(THREE_FRIDAYS);
        LocalDate christmas = LocalDate.of(2026, 12, 25);
        assertEquals(
                Optional.of("kept 2 of the last 2 together"),
                together.kept("Ash", "Dee", christmas).map(Message::english));
        assertEquals(together.kept("Ash", "Dee", christmas), together.kept("Dee", "Ash", christmas));
        assertEquals(
                List.of("Ash and Dee remember 18 December differently; ask them."),
                together.differing("Ash", "Dee", christmas).stream()
                        .map(Message::english)
                        .toList());
        assertEquals(Optional.empty(), together.kept("Ash", "Bo", christmas));
        assertEquals(Optional.empty(), together.kept("Ash", "Ash", christmas));
    }

    /** 45 on the 4th; of 60 and 50 on the 11th the shorter; 30 that only Dee tells. Eight weeks after the 4th it counts no more. */
    @Test
    void minutes_of_the_last_eight_weeks() {
        Together together = told("4 Ash worked minutes 45 & 11 Ash worked minutes 60 & 11 Dee worked minutes 50"
                + " & 18 Dee worked minutes 30");
        assertEquals(
                Optional.of("125 minutes together in the last 8 weeks"),
                together.minutes("Ash", "Dee", LocalDate.of(2026, 12, 25)).map(Message::english));
        assertEquals(
                Optional.of("80 minutes together in the last 8 weeks"),
                together.minutes("Dee", "Ash", LocalDate.of(2027, 1, 29)).map(Message::english));
        assertEquals(Optional.empty(), together.minutes("Dee", "Ash", LocalDate.of(2026, 12, 3)));
        assertEquals(Optional.empty(), told(THREE_FRIDAYS).minutes("Ash", "Dee", LocalDate.of(2026, 12, 25)));
    }

    /** What is told; on which day of December one asks; what is said. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // The other one has a week.
                "4 Ash kept | 11 | ",
                "4 Ash kept | 12 | kept 1 of the last 1 together",
                "4 Ash kept & 4 Dee came late | 4 | kept 1 of the last 1 together",
                // Called off is neither kept nor missed; fewer than half says nothing.
                "4 Ash called off & 4 Dee kept | 31 | ",
                "1 Ash did not come & 2 Ash did not come & 3 Ash kept | 31 | ",
                "1 Ash did not come & 2 Ash did not come & 3 Ash kept & 4 Dee kept | 31 | kept 2 of the last 4 together",
                // Only the last six.
                "1 Ash did not come & 2 Ash kept & 3 Ash kept & 4 Ash kept & 5 Ash kept & 6 Ash did not come & 7 Ash kept"
                        + " | 31 | kept 5 of the last 6 together",
                "4 Ash agreed & 4 Ash worked minutes 45 | 31 | "
            })
    void what_was_kept(String lines, int today, String said) {
        assertEquals(
                Optional.ofNullable(said),
                told(lines).kept("Dee", "Ash", LocalDate.of(2026, 12, today)).map(Message::english));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4 Ash agreed | Ash",
                "4 Ash led first | Dee",
                "4 Ash led first & 11 Dee led first | Ash",
                "4 Dee led first & 11 Ash led first | Dee",
                "4 Ash led first & 5 Ash led first & 11 Dee led first | Dee"
            })
    void who_led_first_on_fewer_drills_leads_next(String lines, String leads) {
        assertEquals(leads, told(lines).leadsFirst("Ash", "Dee"));
    }

    /** Sessions of one to five drills, the two taking turns in each: nobody ever has two turns more. */
    @Test
    void turns_stay_equal() {
        Random chance = new Random(12);
        StringBuilder lines = new StringBuilder("1 Ash agreed");
        int ahead = 0;
        for (int day = 2; day < 30; day++) {
            boolean ash = told(lines.toString()).leadsFirst("Ash", "Dee").equals("Ash");
            // One line a day stands for the drill that makes the number odd; of an even number both lead equally many.
            if (chance.nextInt(5) % 2 == 0) {
                lines.append(" & " + day + (ash ? " Ash" : " Dee") + " led first");
                ahead += ash ? 1 : -1;
            }
            assertTrue(Math.abs(ahead) <= 1, lines.toString());
        }
    }
}
