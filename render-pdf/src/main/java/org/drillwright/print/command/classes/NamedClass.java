package org.drillwright.print.command.classes;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.TextFormat;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.DataFile;
import org.drillwright.print.command.planning.Tonight;
import org.drillwright.print.command.write.Kind;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the commands that plan one class are all given: which class, and how it is told. */
final class NamedClass {

    @Parameters(paramLabel = "CLASS", arity = "1")
    String name = "";

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    TextFormat format = TextFormat.TEXT;

    @Option(names = "--sheet", paramLabel = "SIZE")
    Optional<SheetSize> sheet = Optional.empty();

    /** The class and all that belongs to it; nothing if something of it has errors, which are shown. */
    Optional<Tonight> tonight(Invocation run, SchoolOption school) {
        return ClassRun.open(run, school.folder(), List.of(name)).tonight(name);
    }

    SheetSize sheet(School settings) {
        return sheet.orElse(settings.sheet());
    }

    /** The place of a sheet, if one is wished. */
    Optional<String> sheetFile(Optional<String> out) {
        return out.filter(name -> format == TextFormat.TEXT);
    }

    /** The place of what programs read, if it is wished in a file. */
    Optional<DataFile> dataFile(Invocation run, Optional<String> out) {
        return out.filter(name -> format == TextFormat.JSON).map(name -> new DataFile(run, name, Kind.DATA));
    }

    /** Says it as it was asked for. */
    void tell(Invocation run, Optional<DataFile> place, Supplier<String> text, Supplier<String> json) {
        if (format == TextFormat.JSON) {
            DataFile.tell(run, place, json.get());
        } else {
            run.out().print(text.get());
        }
    }
}
