package org.drillwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.drillwright.model.Drill;
import org.drillwright.model.Step;

/**
 * What two drills must have in common to be one drill written twice: weapon, hands, start and all turns as they are read,
 * without regard to capitals and signs.
 */
public record TurnWords(List<String> words) {

    private static final Pattern NEITHER_LETTER_NOR_DIGIT = Pattern.compile("[^\\p{L}\\p{N}]+");

    public TurnWords {
        words = List.copyOf(words);
    }

    public static TurnWords of(Drill drill) {
        List<String> words =
                new ArrayList<>(List.of(drill.weapon().word(), drill.hands().word(), fold(drill.start())));
        for (Step step : drill.steps()) {
            words.add(step.leader().map(turn -> fold(turn.read())).orElse(""));
            words.add(step.follower().map(turn -> fold(turn.read())).orElse(""));
        }
        return new TurnWords(words);
    }

    private static String fold(String text) {
        return NEITHER_LETTER_NOR_DIGIT
                .matcher(text.toLowerCase(Locale.ROOT))
                .replaceAll(" ")
                .strip();
    }
}
