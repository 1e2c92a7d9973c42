package org.drillwright.print.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the folder of an invented school, for trying commands on. */
public record SchoolFiles(Path root) {

    public static final String SETTINGS = """
            name: Saltmarsh Hall (invented)
            sets:
              thrusts:
                drills: [riposte, straight]
              feet:
                level: beginner
            """;

    /** Two partner drills and one for a class, without a finding. */
    public static SchoolFiles sound(Path root) {
        return new SchoolFiles(root)
                .with("school.yaml", SETTINGS)
                .with("straight.yaml", straight())
                .with("riposte.yaml", riposte())
                .with("feet/steps.yaml", steps());
    }

    public SchoolFiles with(String name, String text) {
        try {
            Path file = root.resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
        return this;
    }

    public static String riposte() {
        return """
                title: Parry of quarte, straight riposte
                level: intermediate
                form: partner
                weapon: foil
                gear: [mask, jacket, underarm protector, glove]
                start: On guard in sixte, blades apart, at lunge distance.
                opening: Salute. Masks on. On guard in sixte.
                steps:
                  - leader: Extend to the high inside line and lunge.
                    follower: Parry quarte.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                  - leader: Hold the lunge and take the touch.
                    follower: Riposte straight to the high inside line.
                    distance: extension
                    safety: Stop the point on the jacket.
                  - leader: Recover on guard in sixte.
                    follower: Return to guard in sixte.
                    distance: lunge
                closing: Step back out of distance. Masks off. Salute.
                """;
    }

    public static String straight() {
        return """
                title: Straight thrust with the lunge
                level: intermediate
                form: partner
                weapon: foil
                gear: [mask, jacket, underarm protector, glove]
                start: On guard in octave, blades apart, at lunge distance.
                opening: Salute. Masks on. On guard in octave.
                steps:
                  - leader: Extend to the high outside line and lunge.
                    follower: Take the touch.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                  - leader: Recover on guard in octave.
                    follower: Hold on guard.
                    distance: lunge
                closing: Step back out of distance. Masks off. Salute.
                """;
    }

    public static String steps() {
        return """
                title: Steps by the call
                level: beginner
                form: solo
                weapon: none
                gear: [flat shoes]
                start: On guard without weapons, out of distance.
                opening: Salute. On guard.
                steps:
                  - leader: Advance!
                    follower: Advance.
                    distance: out
                  - leader: Retreat!
                    follower: Retreat.
                    distance: out
                closing: Stand at attention. Salute.
                """;
    }

    /** The riposte without one of its safety notes: an error. */
    public static String withoutSafety() {
        return riposte().replace("    safety: Stop the point on the jacket.\n", "");
    }

    /** A warning, and no error: the same safety note throughout. */
    public static String warned() {
        return riposte().replace("Stop the point on the jacket.", "Arrive softly and let the blade bend.");
    }
}
