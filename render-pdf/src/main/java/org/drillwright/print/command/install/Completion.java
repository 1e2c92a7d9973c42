package org.drillwright.print.command.install;

import java.util.List;
import org.drillwright.print.command.Choices;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** A script by which bash, and zsh with its bashcompinit, complete commands, options and the words an option may be. */
final class Completion {

    private Completion() {}

    /** The script; the command line handed in is changed and no longer fit to run. */
    static String script(CommandLine line) {
        offerWords(line.getCommandSpec());
        return AutoComplete.bash(line.getCommandName(), line);
    }

    private static void offerWords(CommandSpec command) {
        List.copyOf(command.args())
                .forEach(argument -> Choices.words(kind(argument)).ifPresent(words -> offer(command, argument, words)));
        command.subcommands().values().forEach(one -> offerWords(one.getCommandSpec()));
    }

    /** What is in it, where the argument may be left out or given several times. */
    private static Class<?> kind(ArgSpec argument) {
        Class<?>[] within = argument.auxiliaryTypes();
        return within.length == 0 ? argument.type() : within[within.length - 1];
    }

    /**
     * Otherwise the names that constants have inside the program would be offered. The script keeps the words of two
     * options under one name if their labels are the same, so the label becomes the option's own name.
     */
    private static void offer(CommandSpec command, ArgSpec argument, List<String> words) {
        command.remove(argument);
        if (argument instanceof OptionSpec option) {
            command.add(OptionSpec.builder(option)
                    .completionCandidates(words)
                    .paramLabel(option.longestName())
                    .build());
        } else if (argument instanceof PositionalParamSpec word) {
            command.add(PositionalParamSpec.builder(word)
                    .completionCandidates(words)
                    .build());
        }
    }
}
