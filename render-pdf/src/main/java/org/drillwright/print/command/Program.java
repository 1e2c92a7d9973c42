package org.drillwright.print.command;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.drillwright.print.command.cards.BookletCommand;
import org.drillwright.print.command.cards.CardsCommand;
import org.drillwright.print.command.cards.HandoutCommand;
import org.drillwright.print.command.cards.IdentifyCommand;
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
import org.drillwright.print.command.console.StandardStreams;
import org.drillwright.print.command.console.StreamWriter;
import org.drillwright.print.command.drills.CheckCommand;
import org.drillwright.print.command.drills.CoverageCommand;
import org.drillwright.print.command.drills.ExplainCommand;
import org.drillwright.print.command.drills.NewCommand;
import org.drillwright.print.command.drills.TidyCommand;
import org.drillwright.print.command.editor.LanguageServerCommand;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SpokenLanguage;
import org.drillwright.print.command.school.BeginCommand;
import org.drillwright.print.command.school.NamesCommand;
import org.drillwright.print.command.school.SchemaCommand;
import org.drillwright.print.command.school.SchoolCommand;
import org.drillwright.print.command.school.WordsCommand;
import org.drillwright.print.command.watch.WatchCommand;
import org.drillwright.print.impose.Shift;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import picocli.CommandLine.UnmatchedArgumentException;

/** The commands put together, and what is said when one cannot run. Never exits, so that it can be tried in process. */
public final class Program {

    private Program() {}

    /** Names that a command had once; they work for one release more. */
    private static final Map<String, String> ONCE = Map.of("mark", "identify");

    /** For shells; no help tells of it. */
    private static final String NAMES = "names";

    private static final List<String> HELP = List.of("-h", "--help", "help");

    /** The help is no wider than a page is read well, and no narrower than it can be set. */
    private static final int WIDEST = 100;

    private static final int NARROWEST = 55;

    /** Runs one command; the exit code. */
    public static int run(Invocation run, String... arguments) {
        try {
            String[] meant = meant(arguments);
            SchoolOption school = new SchoolOption();
            Invocation spoken = run.in(new SpokenLanguage(run, school, arguments));
            CommandLine line = commands(spoken, school, needed(meant), Program::once);
            if (arguments.length == 0 || Arrays.stream(arguments).anyMatch(HELP::contains)) {
                HelpWords.give(line, spoken::language);
            }
            if (run.terminal() && Arrays.stream(arguments).anyMatch(HELP::contains)) {
                line.setUsageHelpWidth(
                        Math.max(NARROWEST, Math.min(WIDEST, run.width().getAsInt())));
            }
            return line.execute(meant);
        } catch (VirtualMachineError | LinkageError tooMuch) {
            return ErrorMessages.ofMemory(run, tooMuch);
        }
    }

    /** {@code help cards} is {@code cards --help}. */
    private static String[] meant(String... arguments) {
        if (arguments.length == 0 || !arguments[0].equals("help")) {
            return arguments;
        }
        return Stream.concat(Arrays.stream(arguments).skip(1), Stream.of("--help"))
                .toArray(String[]::new);
    }

    /** If a command comes first, only that one: to read the options of all of them is a quarter of a cold start. */
    private static List<String> needed(String... arguments) {
        List<String> names = CommandGroups.names();
        Optional<String> first = Arrays.stream(arguments).findFirst().map(name -> ONCE.getOrDefault(name, name));
        return first.filter(name -> name.equals(NAMES) || names.contains(name))
                .map(List::of)
                .orElse(names);
    }

    /** The commands with their options, as the help and the manual know them. */
    public static CommandLine commands(Invocation run) {
        CommandLine line = commands(run, new SchoolOption(), CommandGroups.names(), name -> new String[0]);
        HelpWords.give(line, run::language);
        return line;
    }

    private static String[] once(String name) {
        return ONCE.entrySet().stream()
                .filter(entry -> entry.getValue().equals(name))
                .map(Map.Entry::getKey)
                .toArray(String[]::new);
    }

    private static CommandLine commands(
            Invocation run, SchoolOption school, List<String> names, Function<String, String[]> once) {
        CommandLine line = new CommandLine(new RootCommand(run, school));
        for (String name : names) {
            line.addSubcommand(name, command(name, run, school), once.apply(name));
        }
        line.getHelpSectionMap()
                .put(
                        UsageMessageSpec.SECTION_KEY_COMMAND_LIST,
                        help -> CommandGroups.listed(help.commandSpec(), run.language()));
        Choices.register(line);
        line.registerConverter(Shift.class, new ShiftWord());
        line.registerConverter(LocalDate.class, new DayWord());
        line.registerConverter(Integer.class, new WholeNumber());
        line.registerConverter(int.class, new WholeNumber());
        return line.setExpandAtFiles(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(run.colour() ? Ansi.ON : Ansi.OFF))
                .setOut(new PrintWriter(new StreamWriter(run.out()), true))
                .setErr(new PrintWriter(new StreamWriter(run.err()), true))
                .setParameterExceptionHandler((problem, wrong) -> ErrorMessages.ofArguments(run, problem))
                .setExecutionExceptionHandler((problem, at, parsed) -> problem instanceof CannotRun known
                        ? ErrorMessages.ofTheWorld(run, known)
                        : ErrorMessages.ours(run, problem))
                .setExecutionStrategy(Program::execute);
    }

    /** Whoever asks for help with what is not there gets no help with something else. */
    private static int execute(ParseResult parsed) {
        for (CommandLine at : parsed.asCommandLineList()) {
            List<String> unknown = at.getUnmatchedArguments();
            if (!unknown.isEmpty()) {
                throw new UnmatchedArgumentException(at, unknown);
            }
        }
        return new RunLast().execute(parsed);
    }

    private static Object command(String name, Invocation run, SchoolOption school) {
        return switch (name) {
            case "check" -> new CheckCommand(run, school);
            case NAMES -> new NamesCommand(run, school);
            case "begin" -> new BeginCommand(run, school);
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
            case "language-server" -> new LanguageServerCommand(run, school, StandardStreams::bytes);
            case "handout" -> new HandoutCommand(run, school);
            case "booklet" -> new BookletCommand(run, school);
            case "coverage" -> new CoverageCommand(run, school);
            case "identify" -> new IdentifyCommand(run, school);
            default -> throw new IllegalArgumentException(name);
        };
    }
}
