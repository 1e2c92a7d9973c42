package org.drillwright.print.command;

import java.io.PrintWriter;
import java.time.LocalDate;
import org.drillwright.print.command.classes.HallCommand;
import org.drillwright.print.command.classes.LessonCommand;
import org.drillwright.print.command.classes.PairsCommand;
import org.drillwright.print.command.classes.PartnersCommand;
import org.drillwright.print.command.classes.ProgressCommand;
import org.drillwright.print.command.classes.RecordCommand;
import org.drillwright.print.command.classes.SessionCommand;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.StreamWriter;
import org.drillwright.print.impose.Shift;
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

    /** The commands with their options, as the command line, the help and the manual know them. */
    public static CommandLine commands(Invocation run) {
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
        Choices.register(line);
        line.registerConverter(Shift.class, new ShiftWord());
        line.registerConverter(LocalDate.class, new DayWord());
        return line.setExpandAtFiles(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(run.colour() ? Ansi.ON : Ansi.OFF))
                .setOut(new PrintWriter(new StreamWriter(run.out()), true))
                .setErr(new PrintWriter(new StreamWriter(run.err()), true))
                .setParameterExceptionHandler((problem, arguments) -> Faults.ofArguments(run, problem))
                .setExecutionExceptionHandler((problem, at, parsed) ->
                        problem instanceof CannotRun ? Faults.ofTheWorld(run, problem) : Faults.ours(run, problem));
    }
}
