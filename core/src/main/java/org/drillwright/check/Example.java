package org.drillwright.check;

import java.util.List;
import java.util.regex.Pattern;

/** Completes a rule's example to a whole drill, so that it can show only the lines that matter. */
public final class Example {

    private static final String WHOLE = """
            title: An example
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

    private static final Pattern KEY_BEGINS = Pattern.compile("(?m)^(?=\\S)");

    private Example() {}

    /** The example with the keys that it leaves out put behind it. */
    public static String complete(String example) {
        StringBuilder whole = new StringBuilder(example);
        for (String part : parts()) {
            String key = part.substring(0, part.indexOf(':') + 1);
            boolean there = Pattern.compile("(?m)^" + Pattern.quote(key))
                    .matcher(example)
                    .find();
            if (!there) {
                whole.append(part);
            }
        }
        return whole.toString();
    }

    private static List<String> parts() {
        return KEY_BEGINS.splitAsStream(WHOLE).filter(part -> !part.isBlank()).toList();
    }
}
