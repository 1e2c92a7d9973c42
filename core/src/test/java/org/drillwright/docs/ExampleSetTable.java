package org.drillwright.docs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drillwright.check.Subject;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Hands;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Line;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.school.SchoolFolder;
import org.drillwright.terms.Terms;

/** What the intermediate set of the example school works, as the phrase played it. */
final class ExampleSetTable {

    private ExampleSetTable() {}

    static String write() throws IOException {
        SchoolFolder folder = SchoolFolder.open(Path.of("..", "drills"));
        DrillSet set = folder.school().set("intermediate").orElseThrow();
        StringBuilder table =
                new StringBuilder("| drill | attacks | parries | lines | hands |\n|---|---|---|---|---|\n");
        for (SchoolFolder.Entry entry : folder.entriesOf(set)) {
            table.append(row(entry.subject().orElseThrow()));
        }
        return table.toString();
    }

    private static String row(Subject subject) {
        Set<String> attacks = new TreeSet<>();
        Set<String> parries = new TreeSet<>();
        Set<String> lines = new TreeSet<>();
        for (Count count : subject.replay().counts()) {
            for (Played played : count.moves()) {
                add(played, attacks, parries, lines);
            }
        }
        String hands = subject.drill().hands() == Hands.OPPOSITE ? "opposite" : "same";
        return "| " + subject.drill().title() + " | " + joined(attacks) + " | " + joined(parries) + " | "
                + joined(lines) + " | " + hands + " |\n";
    }

    private static void add(Played played, Set<String> attacks, Set<String> parries, Set<String> lines) {
        if (played.move().action() instanceof Action.Strike strike) {
            attacks.add(attack(strike));
            line(played).ifPresent(line -> lines.add(Terms.of(line).english()));
        }
        if (played.move().action() instanceof Action.Parry parry) {
            boolean plain = parry.kind() == Action.ParryKind.UNSTATED;
            String kind = plain ? "" : Terms.of(parry.kind()).english().replace(" parry", "") + " ";
            parry.position().ifPresent(position -> parries.add(kind + position.word()));
        }
    }

    private static Optional<Line> line(Played played) {
        Side other = played.move().by().other();
        return played.after().attackOn(other).map(Attack::line).flatMap(line -> line.value());
    }

    private static String attack(Action.Strike strike) {
        boolean named = strike.path() != Action.Path.UNSTATED && strike.path() != Action.Path.DIRECT;
        String path = named ? word(strike.path()) : strike.cut() ? "cut" : "straight thrust";
        boolean plain = strike.role() == Action.Role.ATTACK || strike.role() == Action.Role.EXTENSION;
        String role = strike.feint() ? "feint, " : plain ? "" : word(strike.role()) + ", ";
        return role + path;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String joined(Set<String> words) {
        return words.isEmpty() ? "–" : words.stream().collect(Collectors.joining("; "));
    }
}
