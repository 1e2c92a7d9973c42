package org.drillwright.print.command;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Enumeration;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.drillwright.print.command.console.Exit;
import org.drillwright.wording.Bundle;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** The help of every command and option, from a file; its language is asked for when it is shown, for an option may tell it. */
final class HelpWords extends ResourceBundle {

    /** What picocli asks for the list of exit codes by, before a number; it wants {@code CODE:MEANING}. */
    private static final String EXITS = ".usage.exitCodeList.";

    private static final List<Integer> CODES = List.of(Exit.DONE, Exit.MATERIAL, Exit.UNABLE);

    private final Supplier<Locale> language;
    private final Set<String> keys = new LinkedHashSet<>();

    private HelpWords(Supplier<Locale> language) {
        this.language = language;
    }

    /** Lets a program and its commands speak in their help. */
    static void give(CommandLine program, Supplier<Locale> language) {
        HelpWords words = new HelpWords(language);
        words.keys.addAll(in(Locale.ENGLISH).keys());
        words.exits(program);
        program.getSubcommands().values().forEach(words::exits);
        program.setResourceBundle(words);
    }

    private static Bundle in(Locale language) {
        return Bundle.in(HelpWords.class, "help", language);
    }

    private void exits(CommandLine command) {
        String name = command.getCommandSpec().qualifiedName(".");
        for (int at = 0; at < exits(name, in(Locale.ENGLISH)).size(); at++) {
            keys.add(name + EXITS + at);
        }
    }

    private static List<String> exits(String command, Bundle words) {
        List<String> exits = new ArrayList<>();
        for (int code : CODES) {
            String ending = ".exit." + code;
            words.keys().stream()
                    .filter(key -> key.endsWith(ending) && names(key, ending).contains(command))
                    .findFirst()
                    .or(() -> Optional.of("exit." + code))
                    .flatMap(words::find)
                    .ifPresent(meaning -> exits.add(code + ":" + meaning));
        }
        return exits;
    }

    /** The commands of {@code drillwright.cards,handout.exit.1}. */
    private static List<String> names(String key, String ending) {
        String commands = key.substring(0, key.length() - ending.length());
        String program = commands.substring(0, commands.indexOf('.') + 1);
        return Stream.of(commands.substring(program.length()).split(","))
                .map(program::concat)
                .toList();
    }

    @Override
    protected @Nullable Object handleGetObject(String key) {
        Bundle words = in(language.get());
        int exits = key.indexOf(EXITS);
        Optional<String> found = exits < 0
                ? words.find(key)
                : exits(key.substring(0, exits), words).stream()
                        .skip(Integer.parseInt(key.substring(exits + EXITS.length())))
                        .findFirst();
        return found.orElse(null);
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(keys);
    }
}
