package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.check.Judged;
import org.drillwright.model.Side;

/**
 * A short phrase and what it leads to, both written by hand. Scenes stand in a text, each after the last:
 *
 * <pre>
 * = On guard in sixte, blades apart, at lunge distance.      the start; before it may stand a weapon or 'opposite'
 * L Extend to the high inside line.                          the leader's turn
 * F Parry quarte.                                            the follower's turn; it ends the count
 * * L sixte open, arm to high-inside | F sixte closed | …    the state behind the last stroke of the count, see StateText
 * > L sixte open, arm to high-inside | F quarte closed | …   the state behind the count; before the first count, of the start
 * ! F NothingToParry                                         what was refused since the last '>'
 * ? F measure                                                what could not be judged, likewise
 * </pre>
 *
 * <p>A state without refusals and questions says that there were none.
 */
record Scene(String start, List<Line> lines) {

    /** A line of a scene: its sign and its words. */
    record Line(char sign, String words) {}

    static Stream<Scene> in(String text) {
        List<Scene> scenes = new ArrayList<>();
        for (String line :
                text.lines().map(String::strip).filter(one -> !one.isEmpty()).toList()) {
            String words = line.substring(1).strip();
            if (line.charAt(0) == '=') {
                scenes.add(new Scene(words, new ArrayList<>()));
            } else {
                scenes.get(scenes.size() - 1).lines.add(new Line(line.charAt(0), words));
            }
        }
        return scenes.stream();
    }

    /** The scene with what the program makes of it in the place of what was written. */
    String played() {
        Replay replay = replay();
        List<Count> counts = replay.counts();
        StringBuilder told = new StringBuilder();
        List<String> beside = new ArrayList<>();
        int at = 0;
        for (Line line : lines) {
            switch (line.sign()) {
                case 'L' -> told.append(shown(line));
                case 'F' -> {
                    told.append(shown(line));
                    beside.addAll(beside(counts.get(at)));
                    at++;
                }
                case '*' ->
                    told.append("* ")
                            .append(StateText.of(lastStroke(counts.get(at - 1)).after()))
                            .append('\n');
                case '>' -> {
                    State state = at == 0 ? replay.start() : counts.get(at - 1).end();
                    told.append("> ").append(StateText.of(state)).append('\n');
                    beside.forEach(one -> told.append(one).append('\n'));
                    beside.clear();
                }
                default -> {}
            }
        }
        return told.toString();
    }

    /** The scene as it was written. */
    String written() {
        StringBuilder told = new StringBuilder();
        lines.forEach(line -> told.append(shown(line)));
        return told.toString();
    }

    Replay replay() {
        String words = start;
        StringBuilder drill = new StringBuilder();
        for (String weapon : List.of("epee", "sabre")) {
            if (words.startsWith(weapon + " ")) {
                drill.append("weapon: ").append(weapon).append('\n');
                words = words.substring(weapon.length() + 1);
            }
        }
        if (words.startsWith("opposite ")) {
            drill.append("hands: opposite\n");
            words = words.substring("opposite ".length());
        }
        drill.append("start: ").append(words).append('\n');
        drill.append(lines.stream().anyMatch(line -> line.sign() == 'L') ? "steps:\n" : "");
        for (Line line : lines) {
            if (line.sign() == 'L') {
                drill.append("  - leader: ").append(line.words()).append('\n');
            } else if (line.sign() == 'F') {
                drill.append("    follower: ").append(line.words()).append('\n');
            }
        }
        return Judged.drill(drill.toString()).subject().replay();
    }

    private static Played lastStroke(Count count) {
        return count.moves().stream()
                .filter(played -> played.move().isAssault())
                .reduce((first, last) -> last)
                .orElseThrow();
    }

    private static List<String> beside(Count count) {
        List<String> beside = new ArrayList<>();
        for (Played played : count.moves()) {
            String who = StateText.letter(played.move().by()) + " ";
            played.refusals().forEach(refusal -> beside.add("! " + who + shown(refusal)));
            played.asked().stream()
                    .filter(question -> !question.known())
                    .forEach(question -> beside.add("? " + who + question.part()));
        }
        for (Side side : Side.values()) {
            if (count.unmet().containsKey(side)) {
                beside.add("! on " + StateText.letter(side) + " "
                        + shown(count.unmet().get(side)));
            }
        }
        return beside;
    }

    private static String shown(Refusal refusal) {
        return refusal.toString()
                .replace("[]", "")
                .replace("Optional.empty", "none")
                .replace("Optional", "");
    }

    private static String shown(Line line) {
        return line.sign() + " " + line.words() + "\n";
    }

    @Override
    public String toString() {
        return start + " "
                + lines.stream()
                        .filter(line -> line.sign() == 'L' || line.sign() == 'F')
                        .map(line -> line.sign() + " " + line.words())
                        .toList();
    }
}
