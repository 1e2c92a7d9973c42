package org.drillwright.print.bench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.drillwright.check.Subject;
import org.drillwright.check.Surroundings;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Hands;
import org.drillwright.model.School;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.model.Weapon;
import org.drillwright.reading.TurnReader;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.read.DrillReader;
import org.drillwright.read.DrillWriter;
import org.drillwright.read.ReadDrill;

/** Drills that read like those of a school, no two alike, always the same; none of them is meant to be fenced. */
final class InventedDrills {

    private static final List<String> LEADER = List.of(
            "Extend to the high inside line and lunge.",
            "Hold the lunge and take the touch.",
            "Disengage under the blade into the high outside line and lunge.",
            "Beat quarte and thrust straight, soft at the end.",
            "Advance, keeping the engagement in sixte.",
            "Recover on guard in sixte.");
    private static final List<String> FOLLOWER = List.of(
            "Parry quarte.",
            "Riposte straight to the high inside line.",
            "Parry circular sixte and hold the hand still.",
            "Take the touch with the arm bent.",
            "Retreat and keep the measure.",
            "Return to guard in sixte.");
    private static final List<String> SAFETY = List.of(
            "Arrive softly and let the blade bend upward.",
            "Stop the point on the jacket; if a blade snaps, call halt.",
            "Masks stay on until the caller says so.",
            "");
    private static final List<String> DISTANCE = List.of("lunge", "extension", "advance-lunge to lunge");

    private final Random random = new Random(17);

    private InventedDrills() {}

    static List<CardSubject> first(int drills) {
        InventedDrills invented = new InventedDrills();
        List<CardSubject> made = new ArrayList<>();
        for (int number = 1; number <= drills; number++) {
            CardSubject.Place place = new CardSubject.Place("Invented set", number, drills);
            Subject subject = played(invented.drill(number));
            made.add(new CardSubject(
                    subject.drill(),
                    School.DEFAULT,
                    Optional.of(place),
                    false,
                    List.of(),
                    Optional.of(subject.replay())));
        }
        return made;
    }

    private static Subject played(Drill drill) {
        byte[] file = DrillWriter.write(drill).getBytes(StandardCharsets.UTF_8);
        ReadDrill read = new DrillReader(School.DEFAULT)
                .read(drill.id(), drill.id() + ".yaml", file)
                .value()
                .orElseThrow();
        Surroundings surroundings = new Surroundings(School.DEFAULT, TurnReader.standard(), Map.of());
        return new Subject(read.drill(), read.file(), read.places(), surroundings);
    }

    private Drill drill(int number) {
        List<Step> steps = new ArrayList<>();
        int counts = 3 + random.nextInt(3);
        for (int count = 0; count < counts; count++) {
            steps.add(step());
        }
        return new Drill(
                "drill-" + number,
                "Invented drill " + number + ", " + one(DISTANCE),
                "intermediate",
                Form.PARTNER,
                Weapon.FOIL,
                Hands.SAME,
                List.of(),
                List.of(),
                List.of("mask", "jacket", "underarm protector", "glove"),
                "",
                "On guard in sixte, blades apart, at lunge distance.",
                "Salute. Masks on. On guard in sixte.",
                steps,
                "Step back out of distance. Masks off. Salute.",
                6,
                true,
                Optional.empty(),
                "",
                List.of("Stop at once if a blade snaps."),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Map.of());
    }

    private Step step() {
        return new Step(
                OptionalInt.empty(),
                "",
                Optional.of(Turn.of(one(LEADER))),
                Optional.of(Turn.of(one(FOLLOWER))),
                one(DISTANCE),
                one(SAFETY),
                "");
    }

    private String one(List<String> of) {
        return of.get(random.nextInt(of.size()));
    }
}
