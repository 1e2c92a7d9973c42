package org.drillwright.print.parts.packed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.print.parts.Bill;
import org.drillwright.print.parts.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Both halves as modules (Java Language Specification, chapter 7), each part of the bill on the module path. */
class ModulesTest {

    @Test
    void a_card_is_printed_by_modules_and_the_words_of_both_are_found(@TempDir Path folder) throws Exception {
        Path card = folder.resolve("card.pdf");
        assertEquals("", said("cards", "parry-of-quarte", "--speak", "fr", "--out", card.toString()));
        assertEquals("%PDF-", new String(Files.readAllBytes(card), 0, 5, StandardCharsets.US_ASCII));
    }

    private static String said(String... arguments) throws IOException, InterruptedException {
        String modules = Stream.concat(
                        Stream.of(Path.of("target/classes"), Path.of("../core/target/classes")),
                        Bill.parts().stream().filter(part -> !part.isOurs()).map(Part::archive))
                .map(Path::toString)
                .collect(Collectors.joining(File.pathSeparator));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--module-path",
                modules,
                "--module",
                "org.drillwright.print/org.drillwright.print.command.Main"));
        command.addAll(List.of(arguments));
        command.addAll(List.of("--school", "../drills"));
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        String errors = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), errors);
        return errors;
    }
}
