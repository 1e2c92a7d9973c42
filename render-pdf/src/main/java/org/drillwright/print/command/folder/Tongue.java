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
public final class Tongue implements Supplier<Locale> {

    private final Invocation run;
    private final SchoolOption option;
    private Optional<Locale> found = Optional.empty();

    public Tongue(Invocation run, SchoolOption option) {
        this.run = run;
        this.option = option;
    }

    @Override
    public Locale get() {
        if (found.isEmpty()) {
            found = Optional.of(option.language()
                    .or(this::ofTheSchool)
                    .or(() -> ofTheSystem(run.language()))
                    .orElse(Language.ENGLISH)
                    .locale());
        }
        return found.get();
    }

    private Optional<Language> ofTheSchool() {
        try {
            return Settings.language(new SchoolSearch(run).find(option.folder(), List.of()));
        } catch (CannotRun nowhere) {
            return Optional.empty();
        }
    }

    private static Optional<Language> ofTheSystem(Locale system) {
        return Language.all().stream()
                .filter(language -> language.word().equals(system.getLanguage()))
                .findFirst();
    }
}
