package org.drillwright.print.command;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.source.Nearest;
import picocli.CommandLine;

/** What is said when a command could not run: one line each. */
final class Faults {

    private Faults() {}

    /** Something around us is not as it should be. */
    static int ofTheWorld(Invocation run, Exception problem) {
        run.err().println(line(String.valueOf(problem.getMessage())));
        return Exit.UNABLE;
    }

    /** The memory was too small; classes that could not be set up for want of it come as another error. */
    static int ofMemory(Invocation run, Error error) {
        Throwable cause = error;
        while (cause.getCause() != null && !(cause instanceof VirtualMachineError)) {
            cause = cause.getCause();
        }
        if (cause instanceof VirtualMachineError) {
            long most = Runtime.getRuntime().maxMemory() >> 20;
            boolean stack = cause instanceof StackOverflowError;
            run.err()
                    .println("Drillwright ran out of memory"
                            + (stack ? " for its stack" : ", of which it may use " + most + " MB")
                            + ". Set the environment variable JDK_JAVA_OPTIONS to "
                            + (stack ? "-Xss8m" : "-Xmx" + Math.max(1, most / 512) * 2 + "g")
                            + " and run this again, or choose fewer drills.");
            return Exit.UNABLE;
        }
        return ours(run, error);
    }

    /** We are at fault ourselves. */
    static int ours(Invocation run, Throwable fault) {
        String where = Arrays.stream(fault.getStackTrace())
                .filter(frame -> frame.getClassName().startsWith("org.drillwright"))
                .findFirst()
                .map(frame -> " at " + frame.getFileName() + ":" + frame.getLineNumber())
                .orElse("");
        String said = fault.getMessage() == null ? "" : ": " + fault.getMessage();
        run.err()
                .println(line("A fault in Drillwright itself, not in your drills; please report this line: "
                        + fault.getClass().getSimpleName() + where + said));
        return Exit.UNABLE;
    }

    /** The arguments make no sense. */
    static int ofArguments(Invocation run, CommandLine.ParameterException problem) {
        CommandLine at = problem.getCommandLine();
        run.err()
                .println(line(sentence(problem) + " See: " + at.getCommandSpec().qualifiedName() + " --help"));
        return Exit.UNABLE;
    }

    private static String sentence(CommandLine.ParameterException problem) {
        if (problem instanceof CommandLine.UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unknown(unmatched.getUnmatched().get(0), problem.getCommandLine());
        }
        String said = String.valueOf(problem.getMessage());
        return said.endsWith(".") ? said : said + ".";
    }

    private static String unknown(String argument, CommandLine at) {
        boolean option = argument.startsWith("-");
        List<String> known = option
                ? List.copyOf(at.getCommandSpec().optionsMap().keySet())
                : List.copyOf(at.getSubcommands().keySet());
        if (known.isEmpty()) {
            return "The command takes no '" + argument + "'.";
        }
        if (option && argument.matches("-[^-].*\\.ya?ml")) {
            return "'" + argument + "' looks like an option; if it is a file, write './" + argument + "'.";
        }
        String kind = option ? "option" : "command";
        return Nearest.to(argument, known)
                .map(near -> "There is no " + kind + " '" + argument + "'; did you mean '" + near + "'?")
                .orElse("There is no " + kind + " '" + argument + "'.");
    }

    private static String line(String text) {
        return text.lines().map(String::strip).collect(Collectors.joining(" "));
    }
}
