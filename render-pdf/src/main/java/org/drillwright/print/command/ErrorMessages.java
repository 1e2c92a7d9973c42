package org.drillwright.print.command;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.source.Nearest;
import org.drillwright.wording.Message;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/** What is said when a command could not run: one line each. */
final class ErrorMessages {

    private ErrorMessages() {}

    /** Something around us is not as it should be. */
    static int ofTheWorld(Invocation run, CannotRun problem) {
        run.err().println(line(run.said(problem.message())));
        return Exit.UNABLE;
    }

    /** The memory was too small; classes that could not be set up for want of it come as another error. */
    static int ofMemory(Invocation run, Error error) {
        Throwable cause = error;
        while (cause.getCause() != null && !(cause instanceof VirtualMachineError)) {
            cause = cause.getCause();
        }
        if (cause instanceof StackOverflowError) {
            run.sayWhyNot(Message.of(ErrorMessages.class, "no.stack"));
            return Exit.UNABLE;
        }
        if (cause instanceof VirtualMachineError) {
            long most = Runtime.getRuntime().maxMemory() >> 20;
            run.sayWhyNot(Message.of(ErrorMessages.class, "no.memory", most, Math.max(1, most / 512) * 2));
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
        String what = fault.getClass().getSimpleName() + where + said;
        run.err().println(line(run.said(Message.of(ErrorMessages.class, "ours", what))));
        return Exit.UNABLE;
    }

    /** The arguments make no sense. */
    static int ofArguments(Invocation run, CommandLine.ParameterException problem) {
        String command = problem.getCommandLine().getCommandSpec().qualifiedName();
        run.err().println(line(run.said(sentence(problem).then(Message.of(ErrorMessages.class, "see.help", command)))));
        return Exit.UNABLE;
    }

    private static Message sentence(CommandLine.ParameterException problem) {
        if (problem instanceof CommandLine.UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unknown(unmatched.getUnmatched().get(0), problem.getCommandLine());
        }
        Optional<ArgSpec> argument = Optional.ofNullable(problem.getArgSpec());
        if (problem.getCause() instanceof NotThatWord no && argument.isPresent()) {
            return Message.of(ErrorMessages.class, "no.such.value", named(argument.get()), no.message());
        }
        if (problem instanceof CommandLine.MissingParameterException missing) {
            return missing(missing);
        }
        if (problem instanceof CommandLine.OverwrittenOptionException && argument.isPresent()) {
            return Message.of(ErrorMessages.class, "only.once", named(argument.get()));
        }
        String said = String.valueOf(problem.getMessage());
        return Message.plain(said.endsWith(".") ? said : said + ".");
    }

    /** Either something that a command needs is not there, or an option stands there without its value. */
    private static Message missing(CommandLine.MissingParameterException problem) {
        List<ArgSpec> missing = problem.getMissing();
        if (missing.size() == 1 && missing.get(0) instanceof OptionSpec option && !option.required()) {
            return Message.of(ErrorMessages.class, "missing.value", option.longestName(), option.paramLabel());
        }
        List<String> names = missing.stream().map(ErrorMessages::named).toList();
        return Message.counted(ErrorMessages.class, "missing", names.size(), Message.words(names));
    }

    private static String named(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static Message unknown(String argument, CommandLine at) {
        boolean option = argument.startsWith("-");
        List<String> known = option
                ? List.copyOf(at.getCommandSpec().optionsMap().keySet())
                : List.copyOf(at.getSubcommands().keySet());
        if (known.isEmpty()) {
            return Message.of(ErrorMessages.class, "takes.none", argument);
        }
        if (option && argument.matches("-[^-].*\\.ya?ml")) {
            return Message.of(ErrorMessages.class, "file.like.option", argument);
        }
        String none = option ? "no.option" : "no.command";
        return Nearest.to(argument, known)
                .map(near -> Message.of(ErrorMessages.class, none + ".near", argument, near))
                .orElseGet(() -> Message.of(ErrorMessages.class, none, argument));
    }

    private static String line(String text) {
        return text.lines().map(String::strip).collect(Collectors.joining(" "));
    }
}
