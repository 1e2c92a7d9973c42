package org.drillwright.print;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Hands;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.model.Weapon;
import org.drillwright.print.layout.words.CardSubject;

/** Drills of an invented school, for the tests of printing. */
public final class Drills {

    /** An invented school. */
    public static final School SCHOOL = new School(
            "Saltmarsh Hall (invented)",
            School.DEFAULT.levels(),
            List.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            School.DEFAULT.fundamentals(),
            CardSize.A6,
            SheetSize.A4,
            Language.ENGLISH,
            Optional.empty(),
            Duration.ofMinutes(60),
            Duration.ofSeconds(2));

    private Drills() {}

    public static Step step(String leader, String follower, String distance, String safety) {
        return step("", leader, follower, distance, safety);
    }

    public static Step step(String call, String leader, String follower, String distance, String safety) {
        return new Step(
                OptionalInt.empty(),
                call,
                Optional.of(Turn.of(leader)),
                Optional.of(Turn.of(follower)),
                distance,
                safety,
                "");
    }

    public static Drill drill(String id, String title, List<Step> steps) {
        return new Drill(
                id,
                title,
                "intermediate",
                Form.PARTNER,
                Weapon.FOIL,
                Hands.SAME,
                List.of("line", "distance"),
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
                List.of("Stop at once if a blade snaps; nobody lifts a mask before the call."),
                Optional.empty(),
                List.of(),
                Optional.of(LocalDate.of(2026, 11, 2)),
                Map.of());
    }

    /** Three counts. */
    public static Drill riposte() {
        return drill(
                "parry-of-quarte-direct-riposte",
                "Parry of quarte, direct riposte",
                List.of(
                        step(
                                "Extend to the high inside line and lunge.",
                                "Parry quarte.",
                                "lunge",
                                "Arrive softly and let the blade bend upward."),
                        step(
                                "Hold the lunge and take the touch.",
                                "Riposte straight to the high inside line.",
                                "extension",
                                "Stop the point on the jacket; if a blade snaps, call halt."),
                        step("Recover on guard in sixte.", "Return to guard in sixte.", "lunge", "")));
    }

    /** Seven counts, two of them with a call. */
    public static Drill second() {
        return drill(
                "second-intention",
                "Second intention: false attack, parry of the riposte, counter-riposte in the lunge",
                List.of(
                        step("Advance.", "Hold.", "advance-lunge to lunge", "Masks stay on until the closing."),
                        step(
                                "Attack!",
                                "Extend to the high inside line and make a half lunge short of the jacket.",
                                "Parry quarte.",
                                "lunge",
                                "The false attack stops short; keep the point below the bib."),
                        step(
                                "Parry sixte in the lunge.",
                                "Riposte by disengage to the high outside line.",
                                "extension",
                                "Riposte with a bent elbow first, then let the blade bend upward."),
                        step(
                                "Counter-riposte straight to the high outside line.",
                                "Take the touch.",
                                "extension",
                                "Arrive softly; the leader's knee stays over the foot."),
                        step("Recover on guard in sixte.", "Return to guard in sixte.", "lunge", ""),
                        step("Retreat.", "Hold.", "lunge to advance-lunge", ""),
                        step("Halt!", "Stand at attention.", "Stand at attention.", "out", "")));
    }

    /** A class that follows calls. */
    public static Drill solo() {
        Drill drill = drill(
                "advance-and-retreat-by-call",
                "Advance and retreat by call",
                List.of(
                        step("On guard!", "Come on guard.", "out", ""),
                        step("Advance!", "Advance one step and keep the back straight.", "out", ""),
                        step("Advance!", "Advance one step.", "out", ""),
                        step("Retreat!", "Retreat one step; the rear foot moves first.", "out", ""),
                        step("Attention!", "Come to attention.", "out", "")));
        return new Drill(
                drill.id(),
                drill.title(),
                "beginner",
                Form.SOLO,
                Weapon.NONE,
                drill.hands(),
                drill.worksOn(),
                drill.needs(),
                List.of("flat shoes"),
                "",
                "On guard in two ranks, three metres apart.",
                "Salute the caller. On guard.",
                drill.steps(),
                "Attention. Salute.",
                4,
                false,
                Optional.empty(),
                "",
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Map.of());
    }

    /** A drill as another, under an id of its own, that needs some. */
    public static Drill needing(Drill like, String id, List<String> needs) {
        return new Drill(
                id,
                like.title(),
                like.level(),
                like.form(),
                like.weapon(),
                like.hands(),
                like.worksOn(),
                needs,
                like.gear(),
                like.purpose(),
                like.start(),
                like.opening(),
                like.steps(),
                like.closing(),
                like.repeat(),
                like.swap(),
                like.tempo(),
                like.note(),
                like.cautions(),
                like.variantOf(),
                like.tags(),
                like.revised(),
                like.accept());
    }

    public static CardSubject subject(Drill drill) {
        return new CardSubject(
                drill, SCHOOL, Optional.of(new CardSubject.Place("Intermediate foil", 3, 12)), false, List.of());
    }

    public static CardSubject draft(Drill drill) {
        return new CardSubject(
                drill,
                SCHOOL,
                Optional.of(new CardSubject.Place("Intermediate foil", 3, 12)),
                true,
                List.of("Not fully checked: counts 2, 5."));
    }
}
