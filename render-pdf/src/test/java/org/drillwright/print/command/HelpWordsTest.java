package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.drillwright.print.command.console.StandardStreams;
import org.drillwright.wording.Bundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The help says something of every command, option and argument, and of nothing else. */
class HelpWordsTest {

    private static final Bundle ENGLISH = Bundle.in(HelpWords.class, "help", Locale.ENGLISH);

    private static final List<CommandSpec> COMMANDS = commands();

    @TempDir
    Path folder;

    @Test
    void every_command_option_and_argument_is_told_of() {
        List<String> silent = new ArrayList<>();
        for (CommandSpec command : COMMANDS) {
            if (command.usageMessage().header().length == 0) {
                silent.add(command.qualifiedName());
            }
            for (ArgSpec argument : arguments(command)) {
                if (argument.description().length == 0 && !argument.hidden()) {
                    silent.add(command.qualifiedName() + " " + argument.paramLabel());
                }
            }
        }
        assertEquals(List.of(), silent, "put words into command/help_en.properties and its other languages");
    }

    @Test
    void nothing_is_told_of_what_is_not_there() {
        Set<String> left = new TreeSet<>(ENGLISH.keys());
        left.removeIf(key -> key.matches("(.*\\.)?(usage|exit)\\..*"));
        for (CommandSpec command : COMMANDS) {
            for (ArgSpec argument : arguments(command)) {
                String key = argument instanceof OptionSpec option
                        ? option.longestName().replaceFirst("^-+", "")
                        : argument.paramLabel() + "[" + ((PositionalParamSpec) argument).index() + "]";
                left.remove(key);
                left.remove(command.qualifiedName(".") + "." + key);
            }
        }
        assertEquals(Set.of(), left);
    }

    @Test
    void the_sizes_of_cards_and_the_languages_are_all_named() {
        String sizes = ENGLISH.text("drillwright.cards.card");
        Arrays.stream(CardSize.values())
                .filter(size -> !size.word().isEmpty())
                .forEach(size -> assertTrue(sizes.contains(size.word()), size::word));
        Language.all()
                .forEach(language -> Stream.of("speak", "in")
                        .forEach(option -> assertTrue(ENGLISH.text(option).contains(language.word()), option)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    fr | Imprime des exercices
                    de | Druckt Übungen
                    it | Stampa gli esercizi
                    es | Imprime ejercicios
                    """)
    void the_help_speaks_the_language_that_is_asked_for(String language, String said) {
        assertTrue(
                Trial.run(folder, "cards", "--help", "--speak", language).out().contains(said));
        assertTrue(
                Trial.run(folder, "--speak", language, "cards", "--help").out().contains(said));
    }

    private static List<CommandSpec> commands() {
        CommandLine program =
                Program.commands(StandardStreams.open(Optional.empty()).in(() -> Locale.ENGLISH));
        return Stream.concat(Stream.of(program), program.getSubcommands().values().stream())
                .map(CommandLine::getCommandSpec)
                .toList();
    }

    private static List<ArgSpec> arguments(CommandSpec command) {
        List<ArgSpec> all = new ArrayList<>(command.options());
        all.addAll(command.positionalParameters());
        return all;
    }
}
