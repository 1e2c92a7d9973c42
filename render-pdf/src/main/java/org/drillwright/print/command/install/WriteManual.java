package org.drillwright.print.command.install;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.print.command.Program;
import picocli.CommandLine;

/** Started by the build: writes the manual and the completion that are packed with the program. */
public final class WriteManual {

    private WriteManual() {}

    /** @param arguments the folder to write into, and the day of the release */
    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments[0]), arguments[1]);
    }

    /** Pages into {@code man}, as {@code man} looks for them there in each language; the script into {@code completion}. */
    static void write(Path folder, String day) throws IOException {
        Path manual = folder.resolve("man");
        for (Language language : Language.all()) {
            Path own = language.equals(Language.ENGLISH) ? manual : manual.resolve(language.word());
            Path pages = Files.createDirectories(own.resolve("man1"));
            for (ManualPage page : pages(language.locale(), day)) {
                Files.writeString(pages.resolve(page.name() + ".1"), page.source());
            }
        }
        Path scripts = Files.createDirectories(folder.resolve("completion"));
        Files.writeString(
                scripts.resolve("drillwright"),
                ShellCompletion.script(commands(Locale.ENGLISH).getCommandSpec()));
    }

    /** The program's own page first, then one for each command. */
    static List<ManualPage> pages(Locale language, String day) {
        CommandLine line = commands(language);
        return Stream.concat(Stream.of(line), line.getSubcommands().values().stream())
                .map(command -> new ManualPage(command.getCommandSpec(), day, language))
                .toList();
    }

    static CommandLine commands(Locale language) {
        return Program.commands(TrainingRun.silent(Path.of("")).in(() -> language));
    }
}
