package org.drillwright.print.command.classes;

import java.util.Optional;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.TextFormat;
import org.drillwright.print.command.folder.SheetOption;
import org.drillwright.print.command.write.Kind;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the commands that plan one class are all given: which class, and how it is told. */
final class NamedClass {

    @Parameters(paramLabel = "CLASS", arity = "1")
    String name = "";

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    TextFormat format = TextFormat.TEXT;

    @Mixin
    SheetOption sheet = new SheetOption();

    @Option(names = "--out", paramLabel = "FILE")
    Optional<String> out = Optional.empty();

    /** The place of a sheet, if one is wished. */
    Optional<String> sheetFile() {
        return out.filter(name -> format == TextFormat.TEXT);
    }

    /** What is told where no sheet is wished. */
    TextOrData answer(Invocation run) {
        return new TextOrData(run, format == TextFormat.JSON, out, Kind.DATA);
    }
}
