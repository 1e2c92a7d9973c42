package org.drillwright.print.command.folder;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.drillwright.model.Language;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;

/**
 * The language that people are spoken to in: the one that was asked for, or the school's, or the system's; English where the
 * program doesn't know that one. Found out when something is first said, and kept.
 */
public final class SpokenLanguage implements Supplier<Locale> {

    private final Invocation run;
    private final SchoolOption option;
    private final List<String> arguments;
    private Optional<Locale> found = Optional.empty();

    /** @param arguments all of the run's: what is wrong with them has to be said before they are understood */
    public SpokenLanguage(Invocation run, SchoolOption option, String... arguments) {
        this.run = run;
        this.option = option;
        this.arguments = List.of(arguments);
    }

    @Override
    public Locale get() {
        if (found.isEmpty()) {
            found = Optional.of(askedFor()
                    .or(this::ofTheSchool)
                    .or(() -> named(run.language().getLanguage()))
                    .orElse(Language.ENGLISH)
                    .locale());
        }
        return found.get();
    }

    private Optional<Language> askedFor() {
        for (int at = 0; at < arguments.size(); at++) {
            String next = at + 1 < arguments.size() ? arguments.get(at + 1) : "";
            String argument = arguments.get(at);
            Optional<Language> asked = argument.equals(SchoolOption.SPEAK)
                    ? named(next)
                    : argument.startsWith(SchoolOption.SPEAK + "=")
                            ? named(argument.substring(SchoolOption.SPEAK.length() + 1))
                            : Optional.empty();
            if (asked.isPresent()) {
                return asked;
            }
        }
        return Optional.empty();
    }

    private Optional<Language> ofTheSchool() {
        try {
            return Settings.language(new SchoolSearch(run).find(option.folder(), List.of()));
        } catch (CannotRun nowhere) {
            return Optional.empty();
        }
    }

    private static Optional<Language> named(String word) {
        return Language.all().stream()
                .filter(language -> language.word().equals(word.toLowerCase(Locale.ROOT)))
                .findFirst();
    }
}
