package org.drillwright.print.command.install;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.drillwright.print.command.Program;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** Started by the build: writes the manual and the completion that are packed with the program. */
public final class WriteManual {

    private WriteManual() {}

    /** @param arguments the folder to write into, and the day of the release */
    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments[0]), arguments[1]);
    }

    /** Pages into {@code man1}, the script into {@code completion}. */
    static void write(Path folder, String day) throws IOException {
        Path pages = Files.createDirectories(folder.resolve("man1"));
        for (CommandSpec command : all().toList()) {
            ManualPage page = new ManualPage(command, day);
            Files.writeString(pages.resolve(page.name() + ".1"), page.source());
        }
        Path scripts = Files.createDirectories(folder.resolve("completion"));
        Files.writeString(
                scripts.resolve("drillwright"), Completion.script(commands().getCommandSpec()));
    }

    /** The program's own page first, then one for each command. */
    static Stream<CommandSpec> all() {
        CommandLine line = commands();
        return Stream.concat(Stream.of(line), line.getSubcommands().values().stream())
                .map(CommandLine::getCommandSpec);
    }

    static CommandLine commands() {
        return Program.commands(Rehearsal.silent(Path.of("")));
    }
}
