package org.drillwright.print.command.school;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.school.SchoolNames;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells a shell the names that lie in a school, one a line, so that it can complete them. */
@Command(name = "names", hidden = true)
public final class NamesCommand extends CommandInSchool {

    /** What has names. */
    public enum Kind {
        DRILLS,
        SETS,
        LEVELS,
        CLASSES,
        TERMS,
        PEOPLE;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Parameters(paramLabel = "KIND", arity = "1")
    Kind kind = Kind.DRILLS;

    public NamesCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        try {
            names(SchoolNames.of(root(List.of()))).forEach(run.data()::println);
            return Exit.DONE;
        } catch (IOException problem) {
            throw new CannotRun(Message.of(NamesCommand.class, "names-command.the.folder.cannot.be"), problem);
        }
    }

    private List<String> names(SchoolNames names) throws IOException {
        return switch (kind) {
            case DRILLS -> names.drills();
            case SETS -> names.sets();
            case LEVELS -> names.levels();
            case CLASSES -> names.classes();
            case TERMS -> names.terms();
            case PEOPLE -> names.people();
        };
    }
}
