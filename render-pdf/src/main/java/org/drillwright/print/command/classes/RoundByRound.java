package org.drillwright.print.command.classes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Stack;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.planning.Substitution;
import org.drillwright.wording.Message;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * What was said of rounds and of people, in the order in which it was typed: a round holds for what follows it. A group of
 * options would not do: picocli lets all groups from the second on share their lists.
 */
final class RoundByRound {

    static final String FROM = "--from-round";
    static final String WITHOUT = "--without";
    static final String INSTEAD = "--instead";
    static final String WITH = "--with";

    /** One option and its value. */
    record Word(String option, String value) {}

    /**
     * Somebody who is gone.
     *
     * @param instead who took the place
     */
    record Gone(String name, Optional<String> instead) {}

    /** What holds from a round on. */
    record Stage(int fromRound, List<Gone> without, List<String> with) {}

    /** Adds each option's value to the one list that is the value of them all. */
    static final class InOrder implements IParameterConsumer {
        // The interface of picocli wants this class.
        @SuppressWarnings("JdkObsolete")
        @Override
        public void consumeParameters(Stack<String> values, ArgSpec option, CommandSpec command) {
            String name = ((OptionSpec) option).longestName();
            if (values.isEmpty() || command.findOption(values.peek()) != null) {
                throw new MissingParameterException(
                        command.commandLine(),
                        option,
                        "Missing required parameter for option '" + name + "' (" + option.paramLabel() + ")");
            }
            List<Word> said = option.getValue();
            said.add(new Word(name, values.pop()));
        }
    }

    private final List<Word> said;

    RoundByRound(List<Word> said) {
        this.said = List.copyOf(said);
    }

    boolean isAnything() {
        return !said.isEmpty();
    }

    /** The first thing that was said of somebody before any round was named; nothing if a round came first. */
    private Optional<String> withoutRound() {
        return said.stream().findFirst().map(Word::option).filter(option -> !option.equals(FROM));
    }

    /** In the order in which they were typed; what no round stands before holds from the first one on. */
    List<Stage> stages() {
        List<Stage> stages = new ArrayList<>();
        String before = "";
        for (Word word : said) {
            if (word.option().equals(FROM) || stages.isEmpty()) {
                int from = word.option().equals(FROM) ? number(word.value()) : 1;
                stages.add(new Stage(from, new ArrayList<>(), new ArrayList<>()));
            }
            Stage last = stages.get(stages.size() - 1);
            switch (word.option()) {
                case WITHOUT -> last.without().add(new Gone(word.value(), Optional.empty()));
                case WITH -> last.with().add(word.value());
                case INSTEAD -> {
                    if (!before.equals(WITHOUT)) {
                        throw new CannotRun(Message.of(RoundByRound.class, "instead.before"));
                    }
                    Gone gone = last.without().remove(last.without().size() - 1);
                    last.without().add(new Gone(gone.name(), Optional.of(word.value())));
                }
                default -> {}
            }
            before = word.option();
        }
        return stages;
    }

    /** Who came late or left early: nothing may be said before a round, and no round after a later one. */
    List<Substitution> substitutions() {
        withoutRound().ifPresent(option -> {
            throw new CannotRun(Message.of(RoundByRound.class, "round.before", option));
        });
        List<Substitution> changes = new ArrayList<>();
        int last = 1;
        for (Stage stage : stages()) {
            if (stage.fromRound() < last) {
                throw new CannotRun(Message.of(RoundByRound.class, "round.from", last));
            }
            last = stage.fromRound();
            changes.add(new Substitution(
                    last, stage.without().stream().map(Gone::name).toList(), stage.with()));
        }
        return changes;
    }

    private static int number(String typed) {
        try {
            return Integer.parseInt(typed);
        } catch (NumberFormatException none) {
            throw new CannotRun(Message.of(RoundByRound.class, "round.number", FROM, typed));
        }
    }
}
