package org.drillwright.mark;

import java.util.List;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;

/**
 * What a drill's card says, front and back, in one fixed form. Not in it: the drill's id, the order of keys, remarks,
 * how words were broken into lines, and the card's place in a set, for none of these changes what is read in the hall.
 */
final class CardForm {

    /** Another form would change every mark: whoever changes it takes the next number. */
    private static final String VERSION = "1";

    private final StringBuilder text = new StringBuilder();

    private CardForm() {}

    static String of(Drill drill, School school) {
        CardForm form = new CardForm();
        form.put("form", VERSION);
        form.put("language", school.language().word());
        // Of a drill as it was written there is no such line, so its mark is what it was before there were others.
        drill.madeFrom().ifPresent(language -> form.put("made from", language.word()));
        form.head(drill, school);
        for (int at = 0; at < drill.steps().size(); at++) {
            form.step(at, drill.steps().get(at));
        }
        form.end(drill);
        return form.text.toString();
    }

    private void head(Drill drill, School school) {
        put("title", drill.title().isBlank() ? drill.id() : drill.title());
        put("level", drill.level());
        put("partners", drill.form().word());
        put("weapon", drill.weapon().word());
        put("hands", drill.hands().word());
        putAll("gear", school.gearOf(drill));
        put("purpose", drill.purpose());
        put("start", drill.start());
        put("opening", drill.opening());
    }

    private void step(int at, Step step) {
        put("count", String.valueOf(step.number().orElse(at + 1)));
        put("call", step.call());
        for (Side side : Side.values()) {
            put(side.word(), step.turn(side).map(Turn::say).orElse(""));
            // The pictures are drawn from what was read.
            put("means", step.turn(side).map(Turn::read).orElse(""));
        }
        put("distance", step.distance());
        put("safety", step.safety());
        put("note", step.note());
    }

    private void end(Drill drill) {
        put("closing", drill.closing());
        put("repeat", String.valueOf(drill.repeat()));
        put("swap", String.valueOf(drill.swap()));
        put("note", drill.note());
        putAll("caution", drill.cautions());
        put("revised", drill.revised().map(String::valueOf).orElse(""));
    }

    private void putAll(String key, List<String> values) {
        put(key, String.valueOf(values.size()));
        values.forEach(value -> put(key, value));
    }

    /** With single spaces between its words, as nearly every value is from the start. */
    private static String joined(String value) {
        boolean single = true;
        for (int at = 0; at < value.length(); at++) {
            char sign = value.charAt(at);
            single &= sign != ' ' ? sign > '\r' || sign < '\t' : value.charAt(at + 1) != ' ';
        }
        return single ? value : value.replaceAll("\\s+", " ");
    }

    /** With its length, so that no text can pass for two. */
    private void put(String key, String value) {
        String words = joined(value.strip());
        text.append(key)
                .append(' ')
                .append(words.length())
                .append(' ')
                .append(words)
                .append('\n');
    }
}
