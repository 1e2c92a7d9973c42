package org.drillwright.print.command.cards;

import java.util.Optional;
import org.drillwright.model.Language;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.printing.InLanguage;
import org.drillwright.school.SchoolFolder;
import picocli.CommandLine.Option;

/** In which language drills are printed. */
final class LanguageOption {

    @Option(
            names = "--in",
            paramLabel = "LANGUAGE",
            description =
                    "Prints the drills in another language: en, fr, it, es or de. What was read of a turn is said in it"
                            + " anew; what was not read whole stays as it is written. Titles, notes and other free words are"
                            + " those of translations/LANGUAGE.yaml.")
    Optional<Language> into = Optional.empty();

    @Option(
            names = "--list-missing",
            description =
                    "With --in: adds every text that has no translation yet to that file, without changing what is in"
                            + " it, and prints.")
    boolean listMissing;

    boolean isAsked() {
        return into.isPresent();
    }

    /** The language, when the file has been completed if that was asked for. */
    InLanguage open(Invocation run, SchoolFolder folder) {
        if (listMissing && into.isEmpty()) {
            throw new CannotRun("--list-missing goes with --in.");
        }
        InLanguage printed = InLanguage.of(run, folder, into);
        if (listMissing) {
            printed.listMissing();
        }
        return printed;
    }
}
