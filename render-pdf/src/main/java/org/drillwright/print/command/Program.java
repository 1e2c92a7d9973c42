package org.drillwright.print.command;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Locale;
import org.drillwright.model.CardSize;
import org.drillwright.model.Hands;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.classes.HallCommand;
import org.drillwright.print.command.classes.LessonCommand;
import org.drillwright.print.command.classes.PairsCommand;
import org.drillwright.print.command.classes.PartnersCommand;
import org.drillwright.print.command.classes.PlanFormat;
import org.drillwright.print.command.classes.ProgressCommand;
import org.drillwright.print.command.classes.RecordCommand;
import org.drillwright.print.command.classes.SessionCommand;
import org.drillwright.print.command.classes.TableFormat;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.StreamWriter;
import org.drillwright.print.command.printing.Edge;
import org.drillwright.print.command.printing.Paper;
import org.drillwright.print.impose.Laminate;
import org.drillwright.print.impose.Shift;
import org.drillwright.print.layout.Back;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** The commands put together, and what is said when one cannot run. Never exits, so that it can be tried in process. */
public final class Program {

    private Program() {}

    /** Runs one command; the exit code. */
    public static int run(Invocation run, String... arguments) {
        try {
            return commands(run).execute(arguments);
        } catch (VirtualMachineError | LinkageError tooMuch) {
            return Faults.ofMemory(run, tooMuch);
        }
    }

    static CommandLine commands(Invocation run) {
        SchoolOption school = new SchoolOption();
        CommandLine line = new CommandLine(new RootCommand(run, school))
                .addSubcommand(new CheckCommand(run, school))
                .addSubcommand(new CardsCommand(run, school))
                .addSubcommand(new NewCommand(run, school))
                .addSubcommand(new SchoolCommand(run, school))
                .addSubcommand(new ExplainCommand(run, school))
                .addSubcommand(new WordsCommand(run, school))
                .addSubcommand(new PairsCommand(run, school))
                .addSubcommand(new LessonCommand(run, school))
                .addSubcommand(new RecordCommand(run, school))
                .addSubcommand(new ProgressCommand(run, school))
                .addSubcommand(new HallCommand(run, school))
                .addSubcommand(new PartnersCommand(run, school))
                .addSubcommand(new SessionCommand(run, school))
                .addSubcommand(new SchemaCommand(run, school))
                .addSubcommand(new TidyCommand(run, school))
                .addSubcommand(new WatchCommand(run, school))
                .addSubcommand(new HandoutCommand(run, school))
                .addSubcommand(new BookletCommand(run, school))
                .addSubcommand(new CoverageCommand(run, school))
                .addSubcommand(new MarkCommand(run, school));
        line.registerConverter(ReportFormat.class, Choice.of(ReportFormat.values(), ReportFormat::word));
        line.registerConverter(
                SchemaCommand.Kind.class, Choice.of(SchemaCommand.Kind.values(), SchemaCommand.Kind::word));
        line.registerConverter(Hands.class, Choice.of(Hands.values(), Hands::word));
        line.registerConverter(CardSize.class, Choice.of(CardSize.values(), CardSize::word));
        line.registerConverter(
                Back.class, Choice.of(Back.values(), back -> back.name().toLowerCase(Locale.ROOT)));
        line.registerConverter(Edge.class, Choice.of(Edge.values(), Edge::word));
        line.registerConverter(
                Laminate.class,
                Choice.of(Laminate.values(), laminate -> laminate.name().toLowerCase(Locale.ROOT)));
        line.registerConverter(Shift.class, new ShiftWord());
        line.registerConverter(PlanFormat.class, Choice.of(PlanFormat.values(), PlanFormat::word));
        line.registerConverter(TableFormat.class, Choice.of(TableFormat.values(), TableFormat::word));
        line.registerConverter(LocalDate.class, new DayWord());
        line.registerConverter(SheetSize.class, Choice.of(SheetSize.values(), SheetSize::word));
        line.registerConverter(Paper.class, Choice.of(Paper.values(), Paper::word));
        return line.setExpandAtFiles(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(run.colour() ? Ansi.ON : Ansi.OFF))
                .setOut(new PrintWriter(new StreamWriter(run.out()), true))
                .setErr(new PrintWriter(new StreamWriter(run.err()), true))
                .setParameterExceptionHandler((problem, arguments) -> Faults.ofArguments(run, problem))
                .setExecutionExceptionHandler((problem, at, parsed) ->
                        problem instanceof CannotRun ? Faults.ofTheWorld(run, problem) : Faults.ours(run, problem));
    }
}
