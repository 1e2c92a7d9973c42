package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.model.Language;
import org.drillwright.model.Side;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Line;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Fencer;
import org.drillwright.phrase.Range;
import org.drillwright.print.pose.Aimed;
import org.drillwright.print.pose.Closing;
import org.drillwright.print.pose.Scene;
import org.drillwright.print.pose.Threat;

/** Says what a picture shows, in the language of the card. */
final class Spoken {

    private final Words words;

    Spoken(Language language) {
        this.words = Words.in(language);
    }

    /** What is said of the lines of those whose lines are drawn; empty if no one's are. */
    String lines(Scene scene) {
        List<String> sentences = new ArrayList<>();
        for (Side attacker : Side.values()) {
            scene.at(attacker.other())
                    .ifPresent(aimed -> sentences.addAll(scene.partner() ? lines(attacker, aimed) : alone(aimed)));
        }
        return String.join(" ", sentences);
    }

    private List<String> lines(Side attacker, Aimed aimed) {
        List<String> sentences = new ArrayList<>();
        if (!aimed.known()) {
            sentences.add(words.text("unknown.attack", words.of("side", attacker)));
        }
        Optional<Threat> threat = aimed.threat();
        threat.ifPresent(one -> sentences.add(words.text("sentence", words.of("side", attacker), stroke(one, aimed))));
        boolean said = threat.filter(one -> closes(one, aimed)).isPresent();
        if (!said) {
            sentences.addAll(closing(words.of("side", attacker.other()), aimed.closing()));
        }
        return sentences;
    }

    /** Without a partner there is no attack, only what the hand closes. */
    private List<String> alone(Aimed aimed) {
        return closing(words.text("side.class"), aimed.closing());
    }

    private String stroke(Threat threat, Aimed aimed) {
        String role = threat.attack().meant() || threat.attack().role() == Role.EXTENSION
                ? words.of("role", role(threat.attack()))
                : words.text("role.threat");
        String into =
                threat.line().value().map(line -> words.of("into", line)).orElseGet(() -> words.text("into.unknown"));
        String shown = threat.shown()
                .map(line -> words.text("shown", words.of("into", line)))
                .orElse("");
        return words.text("stroke", role, into, measure(threat.from())) + shown + end(threat, aimed);
    }

    /** An extension that means to touch is an attack. */
    private static Role role(Attack attack) {
        return attack.meant() && attack.role() == Role.EXTENSION ? Role.ATTACK : attack.role();
    }

    private String end(Threat threat, Aimed aimed) {
        if (threat.end() instanceof AttackEnd.PastTheParry past) {
            return words.text("fate", words.text("fate.past.parry", words.of("position", past.by())));
        }
        Optional<Position> by = aimed.closing().by();
        if (!isParried(threat) || by.isEmpty()) {
            return words.text("fate", words.text("fate." + threat.end().key()));
        }
        String position = words.of("position", by.get());
        String how = aimed.carriedRound() ? "fate.round" : closes(threat, aimed) ? "fate.closed" : "fate.answered";
        return words.text("fate", words.text(how, position));
    }

    private static boolean isParried(Threat threat) {
        return threat.end() instanceof AttackEnd.Parried || threat.end() instanceof AttackEnd.DrewParry;
    }

    /** Whether the hand parries the stroke by closing its line and no other. */
    private static boolean closes(Threat threat, Aimed aimed) {
        return isParried(threat)
                && threat.line()
                        .value()
                        .filter(line -> aimed.closing().closed().equals(Set.of(line)))
                        .isPresent();
    }

    private List<String> closing(String who, Closing closing) {
        if (!closing.known()) {
            return List.of(words.text("closing.unknown", who));
        }
        Set<Line> lines = closing.closed().isEmpty() ? closing.doubtful() : closing.closed();
        if (lines.isEmpty() || closing.by().isEmpty()) {
            return List.of();
        }
        String named = lines.stream()
                .sorted()
                .map(line -> words.of("line", line))
                .collect(Collectors.joining(words.text(closing.closed().isEmpty() ? "or" : "and")));
        return List.of(
                words.text("closing", who, words.of("position", closing.by().get()), named));
    }

    /** How they stand. */
    String plan(Scene scene) {
        if (!scene.partner()) {
            return words.text("plan.solo", person(scene.end().follower()));
        }
        return words.text(
                "plan",
                person(scene.end().leader()),
                person(scene.end().follower()),
                measure(scene.end().measure()));
    }

    private String person(Fencer fencer) {
        String feet =
                fencer.feet().value().map(known -> words.of("feet", known)).orElseGet(() -> words.text("feet.unknown"));
        return feet + (fencer.extended().is(true) ? words.text("extended") : "");
    }

    private String measure(Range range) {
        if (!range.isKnown()) {
            return words.text("measure.unknown");
        }
        if (range.most() < 0) {
            return words.of("measure", Measure.CLOSE);
        }
        if (range.isExact() || range.least() >= Measure.OUT.steps()) {
            return words.of("measure", Measure.of(range.least()));
        }
        return words.text("measure.unsure");
    }
}
