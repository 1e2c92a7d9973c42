package org.drillwright.translation;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.source.FieldPath;
import org.drillwright.wording.Message;

/**
 * A drill said in another language.
 *
 * @param original the drill as it was written
 * @param drill the same in the other language, played as the original is
 * @param from the language that it was written in
 * @param apart the texts that stay as they were written, by their places in the drill, each with its language
 * @param staying which of its turns, start, opening and closing do, in their order
 * @param beside which of these tell more than could be said, each with the words of the original that tell it; they stand
 *     behind it, {@link #inBrackets}
 * @param turns how many turns, starts, openings and closings there are
 * @param wanted texts that have no translation yet, each with where it stands
 * @param used all texts that a translation was looked for
 * @param unlike translations of turns that are not printed, by their texts, each with what is wrong with it
 */
public record Rendering(
        Subject original,
        Subject drill,
        Language from,
        Map<FieldPath, Language> apart,
        List<FieldPath> staying,
        Map<FieldPath, String> beside,
        int turns,
        Map<String, Message> wanted,
        Set<String> used,
        Map<String, Message> unlike) {

    public Rendering {
        apart = Map.copyOf(apart);
        staying = List.copyOf(staying);
        beside = Map.copyOf(beside);
    }

    /** Words of the original behind what is said in the other language. */
    public static String inBrackets(String words) {
        return " [" + words + "]";
    }
}
