package org.drillwright.print.command.write;

import java.util.Optional;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.read.ReadingLimits;
import org.drillwright.source.Nearest;
import org.drillwright.wording.Message;

/**
 * A short drill that is whole and keeps the rules of its level, to be changed into another.
 *
 * @param id its file's name without the ending
 * @param text the file
 */
public record Skeleton(String id, Level level, String text) {

    /** In the school's language.
     *
     * @param level the name of a level; one that fits if absent
     */
    public static Skeleton of(School school, String title, Optional<String> level, boolean solo) {
        String clean = title.replaceAll("[\\p{Cc}\\p{Cf}\\s]+", " ").strip();
        if (clean.length() > ReadingLimits.SHORT_TEXT) {
            throw new CannotRun(Message.of(Skeleton.class, "skeleton.a.title.has.at", ReadingLimits.SHORT_TEXT));
        }
        Level chosen = level.map(name -> named(school, name)).orElseGet(() -> fitting(school, solo));
        String text = FileTemplate.of(template(chosen, solo), school.language().locale())
                .replace("{fundamental}", Quoted.of(school.fundamentals().get(0)))
                .replace("{level}", Quoted.of(chosen.name()))
                .replace("{title}", Quoted.of(clean));
        return new Skeleton(DrillId.of(clean), chosen, text);
    }

    private static Level named(School school, String name) {
        return school.level(name).orElseThrow(() -> new CannotRun(unknown(school, name)));
    }

    private static Message unknown(School school, String name) {
        var names = school.levels().stream().map(Level::name).toList();
        return Nearest.to(name, names)
                .map(near -> Message.of(Skeleton.class, "skeleton.no.level.near", name, near))
                .orElse(Message.of(Skeleton.class, "skeleton.no.level", name, Message.words(names)));
    }

    private static Level fitting(School school, boolean solo) {
        Level first = school.levels().get(0);
        return school.levels().stream()
                .filter(level -> !solo && level.blades() != Level.Blades.NONE)
                .findFirst()
                .orElse(first);
    }

    private static String template(Level level, boolean solo) {
        if (solo) {
            return "solo.yaml";
        }
        if (level.blades() == Level.Blades.NONE) {
            return "partner-without-blades.yaml";
        }
        return level.turns() == Level.Turns.ONE ? "partner-single-actions.yaml" : "partner.yaml";
    }
}
