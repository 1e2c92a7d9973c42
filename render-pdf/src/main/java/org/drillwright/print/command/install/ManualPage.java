package org.drillwright.print.command.install;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.print.command.CommandGroups;
import org.drillwright.wording.Message;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/**
 * One command's page of the manual, in the order of sections that man-pages(7) gives.
 *
 * @param command with its help in a language
 * @param day of the release, such as 2026-09-01
 * @param language of the help, and of the sections' names
 */
record ManualPage(CommandSpec command, String day, Locale language) {

    /** The name that {@code man} finds it by, such as drillwright-check. */
    String name() {
        return command.qualifiedName("-");
    }

    /** The page as source for {@code man}. */
    String source() {
        UsageMessageSpec usage = command.usageMessage();
        String version = command.root().version()[0];
        Roff page = new Roff(name(), day, Character.toUpperCase(version.charAt(0)) + version.substring(1));
        page.section(section("name")).plain(name() + " - " + summary(usage));
        page.section(section("synopsis")).called(command.qualifiedName(), synopsis());
        if (usage.description().length > 0) {
            page.section(section("description")).plain(joined(usage.description()));
        }
        commands(page);
        options(page);
        page.section(section("exit.status"));
        usage.exitCodeList()
                .forEach((code, meaning) ->
                        page.term(code, Character.toUpperCase(meaning.charAt(0)) + meaning.substring(1) + "."));
        UsageMessageSpec whole = command.root().usageMessage();
        page.section(section("cautions")).plain(joined(whole.footer()));
        page.section(section("see.also")).plain(neighbours().collect(Collectors.joining(", ")));
        return page.toString();
    }

    private String section(String name) {
        return Message.of(ManualPage.class, "section." + name).in(language);
    }

    private static String summary(UsageMessageSpec usage) {
        String header = joined(usage.header());
        return header.endsWith(".") ? header.substring(0, header.length() - 1) : header;
    }

    /** What follows the command's name, as the help shows it but on one line. */
    private String synopsis() {
        Help help = new Help(command, Help.defaultColorScheme(Ansi.OFF));
        String words =
                help.synopsis(0).strip().replaceAll("(?<=,)\\s+(?=Y\\])", "").replaceAll("\\s+", " ");
        return words.substring(command.qualifiedName().length()).strip();
    }

    private void commands(Roff page) {
        if (command.subcommands().isEmpty()) {
            return;
        }
        page.section(section("commands"));
        for (CommandGroups.Group group : CommandGroups.ALL) {
            page.part(group.title().in(language));
            group.names().forEach(name -> page.term(name, CommandGroups.header(command, name)));
        }
    }

    private void options(Roff page) {
        page.section(section("options"));
        command.positionalParameters().stream()
                .filter(word -> !word.hidden())
                .forEach(word -> page.term(word.paramLabel(), joined(word.description())));
        command.options().stream()
                .filter(option -> !option.hidden())
                .forEach(option -> page.term(written(option), joined(option.description())));
    }

    private static String written(OptionSpec option) {
        String names = String.join(", ", option.names());
        return takesValue(option) ? names + "=" + option.paramLabel() : names;
    }

    private static boolean takesValue(ArgSpec option) {
        return option.arity().max() > 0;
    }

    /** The other pages that a reader may want: the program's own from a command's, all commands' from the program's. */
    private Stream<String> neighbours() {
        List<CommandSpec> near = command.parent() == null
                ? command.subcommands().values().stream()
                        .map(picocli.CommandLine::getCommandSpec)
                        .toList()
                : List.of(command.parent());
        return near.stream().map(one -> one.qualifiedName("-") + "(1)");
    }

    /** Picocli's texts hold %n for a new line. */
    private static String joined(String... lines) {
        return Stream.of(lines).map(String::format).collect(Collectors.joining("\n"));
    }
}
