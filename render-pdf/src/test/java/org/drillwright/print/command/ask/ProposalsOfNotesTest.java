package org.drillwright.print.command.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.CardSize;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.Opener;
import org.drillwright.print.layout.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a note on a card proposes is an answer to the next question; the notes are those that printing writes. */
class ProposalsOfNotesTest {

    @TempDir
    Path folder;

    /** The sizes and backs with which cards are printed, one after another, where the first says this. */
    private List<String> printed(String note, String answers) {
        SchoolFiles.sound(folder);
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        Invocation run = new Invocation(
                nowhere,
                nowhere,
                nowhere,
                new BufferedReader(new StringReader(answers)),
                true,
                () -> 80,
                false,
                folder,
                Optional.empty(),
                Opener.NONE,
                Clock.systemUTC(),
                () -> Locale.ENGLISH,
                () -> Locale.ENGLISH);
        List<String> printed = new ArrayList<>();
        new Dialogue(run, folder, arguments -> {
                    String asked = String.join(
                            " ",
                            Stream.of(arguments)
                                    .filter(argument -> argument.startsWith("--card") || argument.startsWith("--back"))
                                    .toList());
                    printed.add(asked);
                    return new Done(0, printed.size() == 1 ? "note: long: " + note + "\n" : "");
                })
                .hold();
        return printed;
    }

    @Test
    void a_larger_card() {
        String many =
                Sentences.manyCards(3, CardSize.A7, Optional.of(CardSize.A5)).english();
        assertEquals(
                List.of("--card=a7 --back=none", "--card=a5 --back=none"),
                printed(many, "print cards\nall\nA7\nnothing\n\nquit\n"));
        assertEquals(List.of("--card=a7 --back=none"), printed(many, "print cards\nall\nA7\nnothing\nkeep\nquit\n"));
        String tooLong =
                Sentences.tooLong(CardSize.A7, Optional.of(CardSize.INDEX_4X6)).english();
        assertEquals(
                List.of("--card=a7 --back=none", "--card=4x6 --back=none"),
                printed(tooLong, "print cards\nall\nA7\nnothing\n\nquit\n"));
    }

    @Test
    void another_back() {
        assertEquals(
                List.of("--card=a6 --back=pictures", "--card=a6 --back=safety"),
                printed(
                        Sentences.backTooLong(CardSize.A6).english(),
                        "print cards\nall\n1\npictures\nconduct\nquit\n"));
    }
}
