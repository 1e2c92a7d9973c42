package org.drillwright.fuzz;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Hands;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.model.Weapon;
import org.drillwright.read.DrillWriter;
import org.drillwright.reading.TurnReader;

/** A drill whose words are picked from those of the trade, played, judged, explained and mended. */
public final class PlayingTarget {

    /** Turns that make sense, so that phrases come about at all. */
    private static final List<String> TURNS = List.of(
            "Hold on guard",
            "extend to the high inside line and lunge",
            "parry quarte",
            "riposte straight to the high inside line",
            "take the touch",
            "recover on guard in sixte",
            "advance",
            "retreat",
            "disengage to the high outside line and lunge",
            "circular parry of sixte",
            "parry octave with a retreat",
            "engage in quarte",
            "beat and thrust to the low outside line",
            "feint low, disengage to the high inside line with a lunge",
            "cut over to the high inside line",
            "cut at the flank with a lunge",
            "parry tierce",
            "parry quinte in the lunge",
            "counter-riposte by disengage",
            "hold the lunge",
            "lunge",
            "stop thrust to the forearm",
            "bind from sixte to septime and lunge",
            "invite in septime",
            "step back out of distance",
            "masks off",
            "masks on",
            "salute your partner",
            "recover forward",
            "fl\u00e8che",
            "half lunge",
            "let it arrive",
            "remise",
            "attaquez en d\u00e9gageant et fendez-vous",
            "parate di quarta",
            "change the engagement",
            "press and straight thrust",
            "counter-disengage to the high inside line",
            "return to guard",
            "false attack with a lunge to the high inside line",
            "opposition");

    private static final List<String> BETWEEN = List.of(
            " ", ", ", ". ", " and ", ", then ", " with ", " or ", " by ", " of the follower ", " to ", " xyzzy ");

    private static final List<String> FORMS = TurnReader.standard().glossary().items().stream()
            .flatMap(item -> item.words().values().stream().flatMap(List::stream))
            .distinct()
            .toList();

    private static final List<String> STARTS = List.of(
            "On guard in sixte, blades apart, at lunge distance.",
            "On guard in quarte, engaged, at lunge distance.",
            "On guard in tierce, at advance-lunge distance.",
            "On guard in octave, blades apart, at extension distance.",
            "Leader on guard in sixte, follower in quarte, blades engaged.",
            "On guard out of distance.",
            "");

    private static final List<String> DISTANCES =
            List.of("lunge", "extension", "close", "advance-lunge", "out", "lunge to extension", "far", "");

    private static final List<String> GEAR = List.of("mask", "jacket", "underarm protector", "glove", "sabre mask");

    private static final int STEPS = 6;
    private static final int WORDS = 5;

    private final Picks picks;

    private PlayingTarget(Picks picks) {
        this.picks = picks;
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        Picks picks = new Picks(bytes);
        boolean mended = picks.below(8) == 7;
        Judgement judgement = Judgement.of(DrillWriter.write(new PlayingTarget(picks).drill()));
        judgement.holds();
        if (mended) {
            judgement.mendingAddsNoFinding();
        }
    }

    private Drill drill() {
        Weapon weapon = picks.of(List.of(Weapon.FOIL, Weapon.EPEE, Weapon.SABRE, Weapon.NONE));
        Hands hands = picks.of(List.of(Hands.values()));
        Form form = picks.below(8) == 7 ? Form.SOLO : Form.PARTNER;
        List<String> levels = School.DEFAULT.levels().stream().map(Level::name).toList();
        String level = levels.get((1 + picks.below(levels.size())) % levels.size());
        String start = picks.of(STARTS);
        String opening =
                picks.below(4) == 3 ? words() : "Salute. Masks on. " + start.replaceAll(", (blades|eng|at).*", ".");
        return new Drill(
                "a-drill",
                "A drill",
                level,
                form,
                weapon,
                hands,
                List.of(),
                List.of(),
                GEAR.subList(0, picks.below(GEAR.size() + 1)),
                "",
                start,
                opening,
                steps(),
                picks.below(4) == 3 ? words() : "Step back out of distance. Masks off. Salute.",
                1 + picks.below(3),
                picks.yes(),
                Optional.<Duration>empty(),
                "",
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                picks.below(8) == 7 ? Map.of("not-back-at-start", "It goes on.") : Map.of());
    }

    private List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        do {
            steps.add(new Step(
                    picks.below(8) == 7 ? OptionalInt.of(picks.below(12)) : OptionalInt.empty(),
                    "",
                    turn(),
                    turn(),
                    picks.of(DISTANCES),
                    picks.yes() ? "Arrive softly and let the blade bend." : "",
                    ""));
        } while (picks.hasMore() && steps.size() < STEPS);
        return steps;
    }

    private Optional<Turn> turn() {
        int kind = picks.below(16);
        if (kind == 15) {
            return Optional.empty();
        }
        return Optional.of(kind == 14 ? new Turn(words(), words()) : Turn.of(words()));
    }

    private String words() {
        int more = picks.below(16);
        StringBuilder words = new StringBuilder(picks.of(TURNS));
        for (int at = 0; at < more - 8 && at < WORDS; at++) {
            words.append(picks.of(BETWEEN)).append(picks.yes() ? picks.of(TURNS) : picks.of(FORMS));
        }
        String text = words.append('.').toString();
        return text.substring(0, Math.min(text.length(), 400)).strip();
    }
}
