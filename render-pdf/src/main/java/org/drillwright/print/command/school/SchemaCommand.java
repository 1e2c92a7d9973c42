package org.drillwright.print.command.school;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.planning.PlannedClasses;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.schema.JsonSchema;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.TermFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows what a file may hold, for editors. */
@Command(name = "schema", sortOptions = false)
public final class SchemaCommand extends CommandInSchool {

    private static final String ENDING = ".json";

    /** The files that have a schema. */
    public enum Kind {
        DRILL,
        SCHOOL,
        TERM,
        CLASS,
        ROSTER;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Parameters(paramLabel = "KIND", arity = "0..1", defaultValue = "drill")
    Kind kind = Kind.DRILL;

    @Option(names = "--out", paramLabel = "FILE")
    Optional<String> out = Optional.empty();

    public SchemaCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        Optional<Path> file = out.map(this::place);
        SchoolFolder folder = opened();
        if (kind == Kind.DRILL && folder.isUnjudged()) {
            run.showWhyNot(folder.folderFindings());
            run.sayWhyNot(Schools.correctFirst(Message.of(SchemaCommand.class, "schema-command.no.schema.was.made")));
            return Exit.MATERIAL;
        }
        String schema = switch (kind) {
            case DRILL -> JsonSchema.drill(folder.school(), folder.titles(), run.language());
            case SCHOOL -> JsonSchema.school(run.language());
            case TERM -> term(folder);
            case CLASS ->
                JsonSchema.ofAClass(PlannedClasses.open(folder).classReader(), folder.titles(), run.language());
            case ROSTER -> roster(folder);
        };
        if (file.isEmpty()) {
            run.data().print(schema);
        } else {
            new WholeFile(file.get()).write(schema);
            run.say(WholeFile.written(file.get()));
        }
        return Exit.DONE;
    }

    private String term(SchoolFolder folder) {
        TermFolder terms = PlannedClasses.terms(folder);
        return JsonSchema.term(terms.people(), terms.titles(), run.language());
    }

    private String roster(SchoolFolder folder) {
        TermFolder terms = PlannedClasses.terms(folder);
        return JsonSchema.roster(
                PlannedClasses.open(folder).rosterReader(), terms.people(), terms.titles(), run.language());
    }

    private Path place(String named) {
        Path file = Locations.path(run.here(), named)
                .orElseThrow(
                        () -> new CannotRun(Message.of(SchemaCommand.class, "schema-command.there.can.be.no", named)));
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(ENDING)) {
            throw new CannotRun(Message.of(SchemaCommand.class, "schema-command.does.not.end.in", named, ENDING));
        }
        if (Files.isDirectory(file)) {
            throw new CannotRun(Message.of(SchemaCommand.class, "schema-command.is.a.folder.name", named));
        }
        return file;
    }
}
