package org.drillwright.print.command.cards;

import java.util.Optional;
import org.drillwright.model.Language;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.printing.InLanguage;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Option;

/** In which language drills are printed. */
final class LanguageOption {

    @Option(names = "--in", paramLabel = "LANGUAGE")
    Optional<Language> into = Optional.empty();

    @Option(names = "--list-missing")
    boolean listMissing;

    /** The language, when the file has been completed if that was asked for. */
    InLanguage open(Invocation run, SchoolFolder folder) {
        if (listMissing && into.isEmpty()) {
            throw new CannotRun(Message.of(LanguageOption.class, "language-option.listmissing.goes.with.in"));
        }
        InLanguage printed = InLanguage.of(run, folder, into);
        if (listMissing) {
            printed.listMissing();
        }
        return printed;
    }
}
