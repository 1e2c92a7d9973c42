package org.drillwright.print.command;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.print.command.console.TextColumn;
import org.drillwright.wording.Message;
import picocli.CommandLine.Model.CommandSpec;

/** The commands by what somebody is doing, in the order in which they are used. */
public final class CommandGroups {

    /** @param doing what one is doing, as its words are called */
    public record Group(String doing, List<String> names) {

        public Group {
            names = List.copyOf(names);
        }

        public Message title() {
            return Message.of(CommandGroups.class, "group." + doing);
        }
    }

    public static final List<Group> ALL = List.of(
            new Group(
                    "write",
                    List.of(
                            "begin",
                            "new",
                            "check",
                            "explain",
                            "watch",
                            "words",
                            "tidy",
                            "coverage",
                            "schema",
                            "language-server")),
            new Group("print", List.of("cards", "identify", "handout", "booklet")),
            new Group("teach", List.of("lesson", "pairs", "hall", "packet", "term", "partners", "session")),
            new Group("keep", List.of("record", "progress", "attendance", "roster", "school")));

    private static final int MARGIN = 2;

    private CommandGroups() {}

    /** Every command's name. */
    static List<String> names() {
        return ALL.stream().flatMap(group -> group.names().stream()).toList();
    }

    /** The list in the help of the program; nothing in the help of a command. */
    static String listed(CommandSpec program, Locale language) {
        if (program.subcommands().isEmpty()) {
            return "";
        }
        int width = program.usageMessage().width();
        int widest = names().stream().mapToInt(String::length).max().orElse(0);
        int column = MARGIN + widest + MARGIN;
        return ALL.stream()
                .map(group -> Message.of(CommandGroups.class, "group.titled", group.title())
                                .in(language) + "\n"
                        + group.names().stream()
                                .map(name -> line(name, header(program, name), column, width))
                                .collect(Collectors.joining()))
                .collect(Collectors.joining("\n"));
    }

    /** What a command does, in a sentence. */
    public static String header(CommandSpec program, String name) {
        return Optional.ofNullable(program.subcommands().get(name))
                .map(command ->
                        String.join(" ", command.getCommandSpec().usageMessage().header()))
                .orElse("");
    }

    private static String line(String name, String header, int column, int width) {
        String start = " ".repeat(MARGIN) + name;
        return start + " ".repeat(column - start.length())
                + String.join("\n" + " ".repeat(column), TextColumn.wrap(header, width - column - 1)) + "\n";
    }
}
