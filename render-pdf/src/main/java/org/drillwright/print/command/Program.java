package org.drillwright.print.command;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import org.drillwright.print.command.cards.BookletCommand;
import org.drillwright.print.command.cards.CardsCommand;
import org.drillwright.print.command.cards.HandoutCommand;
import org.drillwright.print.command.cards.MarkCommand;
import org.drillwright.print.command.classes.AttendanceCommand;
import org.drillwright.print.command.classes.HallCommand;
import org.drillwright.print.command.classes.LessonCommand;
import org.drillwright.print.command.classes.PacketCommand;
import org.drillwright.print.command.classes.PairsCommand;
import org.drillwright.print.command.classes.PartnersCommand;
import org.drillwright.print.command.classes.ProgressCommand;
import org.drillwright.print.command.classes.RecordCommand;
import org.drillwright.print.command.classes.RosterCommand;
import org.drillwright.print.command.classes.SessionCommand;
import org.drillwright.print.command.classes.TermCommand;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.StreamWriter;
import org.drillwright.print.command.drills.CheckCommand;
import org.drillwright.print.command.drills.CoverageCommand;
import org.drillwright.print.command.drills.ExplainCommand;
import org.drillwright.print.command.drills.NewCommand;
import org.drillwright.print.command.drills.TidyCommand;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.school.SchemaCommand;
import org.drillwright.print.command.school.SchoolCommand;
import org.drillwright.print.command.school.WordsCommand;
import org.drillwright.print.command.watch.WatchCommand;
import org.drillwright.print.impose.Shift;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** The commands put together, and what is said when one cannot run. Never exits, so that it can be tried in process. */
public final class Program {

    private Program() {}

    /** In the order in which the help names them. */
    private static final List<String> NAMES = List.of(
            "check",
            "cards",
            "new",
            "school",
            "explain",
            "words",
            "pairs",
            "lesson",
            "record",
            "progress",
            "roster",
            "hall",
            "packet",
            "term",
            "attendance",
            "partners",
            "session",
            "schema",
            "tidy",
            "watch",
            "handout",
            "booklet",
            "coverage",
            "mark");

    /** Runs one command; the exit code. */
    public static int run(Invocation run, String... arguments) {
        try {
            return commands(run, needed(arguments)).execute(arguments);
        } catch (VirtualMachineError | LinkageError tooMuch) {
            return Faults.ofMemory(run, tooMuch);
        }
    }

    /** If a command comes first, only that one: to read the options of all of them is a quarter of a cold start. */
    private static List<String> needed(String... arguments) {
        return arguments.length > 0 && NAMES.contains(arguments[0]) ? List.of(arguments[0]) : NAMES;
    }

    /** The commands with their options, as the command line, the help and the manual know them. */
    public static CommandLine commands(Invocation run) {
        return commands(run, NAMES);
    }

    private static CommandLine commands(Invocation run, List<String> names) {
        SchoolOption school = new SchoolOption();
        CommandLine line = new CommandLine(new RootCommand(run, school));
        for (String name : names) {
            line.addSubcommand(name, command(name, run, school));
        }
        Choices.register(line);
        line.registerConverter(Shift.class, new ShiftWord());
        line.registerConverter(LocalDate.class, new DayWord());
        line.registerConverter(Integer.class, new WholeNumber());
        line.registerConverter(int.class, new WholeNumber());
        return line.setExpandAtFiles(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(run.colour() ? Ansi.ON : Ansi.OFF))
                .setOut(new PrintWriter(new StreamWriter(run.out()), true))
                .setErr(new PrintWriter(new StreamWriter(run.err()), true))
                .setParameterExceptionHandler((problem, arguments) -> Faults.ofArguments(run, problem))
                .setExecutionExceptionHandler((problem, at, parsed) ->
                        problem instanceof CannotRun ? Faults.ofTheWorld(run, problem) : Faults.ours(run, problem));
    }

    private static Object command(String name, Invocation run, SchoolOption school) {
        return switch (name) {
            case "check" -> new CheckCommand(run, school);
            case "cards" -> new CardsCommand(run, school);
            case "new" -> new NewCommand(run, school);
            case "school" -> new SchoolCommand(run, school);
            case "explain" -> new ExplainCommand(run, school);
            case "words" -> new WordsCommand(run, school);
            case "pairs" -> new PairsCommand(run, school);
            case "lesson" -> new LessonCommand(run, school);
            case "record" -> new RecordCommand(run, school);
            case "progress" -> new ProgressCommand(run, school);
            case "roster" -> new RosterCommand(run, school);
            case "hall" -> new HallCommand(run, school);
            case "packet" -> new PacketCommand(run, school);
            case "attendance" -> new AttendanceCommand(run, school);
            case "term" -> new TermCommand(run, school);
            case "partners" -> new PartnersCommand(run, school);
            case "session" -> new SessionCommand(run, school);
            case "schema" -> new SchemaCommand(run, school);
            case "tidy" -> new TidyCommand(run, school);
            case "watch" -> new WatchCommand(run, school);
            case "handout" -> new HandoutCommand(run, school);
            case "booklet" -> new BookletCommand(run, school);
            case "coverage" -> new CoverageCommand(run, school);
            case "mark" -> new MarkCommand(run, school);
            default -> throw new IllegalArgumentException(name);
        };
    }
}
