package org.drillwright.print.command.install;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.print.command.Choices;
import org.drillwright.print.command.school.NamesCommand.Kind;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;

/**
 * A script by which bash, and zsh with its bashcompinit, complete commands, options, the words an option may be, and the
 * names that lie in the school, for which the program itself is asked.
 */
final class ShellCompletion {

    /** What has names in a school, by what the help calls an argument of that kind. */
    private static final Map<String, Kind> NAMED = Map.of(
            "DRILL", Kind.DRILLS,
            "PATH", Kind.DRILLS,
            "SET", Kind.SETS,
            "LEVEL", Kind.LEVELS,
            "CLASS", Kind.CLASSES,
            "TERM", Kind.TERMS,
            "NAME", Kind.PEOPLE);

    private static final String SCRIPT = """
            # Completion of drillwright for bash, and for zsh by bashcompinit. Made by the build.

            # What an option of a command takes: words, or the names of a kind, or a file.
            _drillwright_value() {
                case "$1 $2" in
            {values}
                    *) return 1 ;;
                esac
            }

            # The options of a command, and what its words are.
            _drillwright_command() {
                case "$1" in
            {commands}
                    *) options='{options}' kind='{names}' ;;
                esac
            }

            _complete_drillwright() {
                local current=${COMP_WORDS[COMP_CWORD]} command='' before='' school='' options='' kind='' at word quoted
                for ((at = 1; at < COMP_CWORD; at++)); do
                    word=${COMP_WORDS[at]}
                    if [ "$before" = --school ] && [ "$word" != = ]; then
                        school=$word
                    elif [ -z "$command" ]; then
                        case "$word" in {patterns}) command=$word ;; esac
                    fi
                    [ "$word" = = ] || before=$word
                done
                [ "$current" != = ] || current=
                COMPREPLY=()
                case "$before" in
                    --school) compopt -o dirnames 2>/dev/null; return ;;
                    -*) _drillwright_value "$command" "$before" || { _drillwright_command "$command"; before=; } ;;
                    *) _drillwright_command "$command"; before= ;;
                esac
                if [ -z "$before" ]; then
                    case "$current" in -*) kind=$options ;; esac
                fi
                case "$kind" in
                    file) compopt -o default 2>/dev/null; return ;;
                    @*)
                        kind=$("${COMP_WORDS[0]/#\\~/$HOME}" names "${kind#@}" ${school:+"--school=$school"} 2>/dev/null </dev/null) ;;
                    *) kind=$(printf '%s\\n' $kind) ;;
                esac
                current=${current//\\\\/}
                while IFS= read -r word; do
                    case "$word" in
                        '') ;;
                        "$current"*) printf -v quoted %q "$word"; COMPREPLY+=("$quoted") ;;
                    esac
                done <<<"$kind"
            }

            complete -o default -F _complete_drillwright drillwright
            """;

    private ShellCompletion() {}

    /** The script for a program with these commands. */
    static String script(CommandSpec program) {
        List<CommandSpec> commands = program.subcommands().values().stream()
                .map(picocli.CommandLine::getCommandSpec)
                .toList();
        return SCRIPT.replace("{values}", lines(commands.stream().flatMap(ShellCompletion::values)))
                .replace("{commands}", lines(commands.stream().map(ShellCompletion::command)))
                .replace("{options}", options(program))
                .replace("{names}", names(commands, " "))
                .replace("{patterns}", names(commands, " | "));
    }

    private static String lines(Stream<String> cases) {
        return cases.map(line -> "        " + line).collect(Collectors.joining("\n"));
    }

    private static String names(List<CommandSpec> commands, String between) {
        return commands.stream().map(CommandSpec::name).collect(Collectors.joining(between));
    }

    private static Stream<String> values(CommandSpec command) {
        return command.options().stream()
                .filter(option -> !option.hidden() && option.arity().max() > 0)
                .map(option -> "'" + command.name() + " " + option.longestName() + "') kind='" + kind(option) + "' ;;");
    }

    private static String command(CommandSpec command) {
        String kind = command.positionalParameters().stream()
                .findFirst()
                .map(ShellCompletion::kind)
                .orElse("");
        return "'" + command.name() + "') options='" + options(command) + "' kind='" + kind + "' ;;";
    }

    private static String options(CommandSpec command) {
        return command.options().stream()
                .filter(option -> !option.hidden())
                .flatMap(option -> Arrays.stream(option.names()).filter(name -> name.startsWith("--")))
                .collect(Collectors.joining(" "));
    }

    /** The words it may be; or the names that have to be asked for, with a mark before them; or else a file or nothing. */
    private static String kind(ArgSpec argument) {
        Optional<List<String>> words = Choices.words(type(argument));
        String label = argument.paramLabel().split(" ")[0];
        Kind named = NAMED.get(label);
        if (words.isPresent()) {
            return String.join(" ", words.get());
        }
        if (named != null) {
            return "@" + named.word();
        }
        return label.equals("FILE") ? "file" : "";
    }

    /** What is in it, where the argument may be left out or given several times. */
    private static Class<?> type(ArgSpec argument) {
        Class<?>[] within = argument.auxiliaryTypes();
        return within.length == 0 ? argument.type() : within[within.length - 1];
    }
}
