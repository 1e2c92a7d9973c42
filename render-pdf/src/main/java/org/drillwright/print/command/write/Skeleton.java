package org.drillwright.print.command.write;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.TextColumn;
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

    private static final String REMARK = "# ";

    /** How long a remark's lines are, in characters. */
    private static final int WIDTH = 78;

    private static final Pattern KEY = Pattern.compile("\\{((?:remark|say)\\.[a-z.]+)\\}");

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
        String text = said(template(chosen, solo), school.language().locale())
                .replace("{fundamental}", Quoted.of(school.fundamentals().get(0)))
                .replace("{level}", Quoted.of(chosen.name()))
                .replace("{title}", Quoted.of(clean));
        return new Skeleton(DrillId.of(clean), chosen, text);
    }

    /** With words in place of the keys; remarks are broken into lines. */
    private static String said(String template, Locale language) {
        return template.lines()
                .map(line -> {
                    String said = KEY.matcher(line)
                            .replaceAll(key -> Matcher.quoteReplacement(
                                    Message.of(Skeleton.class, key.group(1)).in(language)));
                    return line.startsWith(REMARK)
                            ? TextColumn.wrap(said.substring(REMARK.length()), WIDTH).stream()
                                    .map(REMARK::concat)
                                    .collect(Collectors.joining("\n"))
                            : said;
                })
                .collect(Collectors.joining("\n", "", "\n"));
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
            return read("solo.yaml");
        }
        if (level.blades() == Level.Blades.NONE) {
            return read("partner-without-blades.yaml");
        }
        return read(level.turns() == Level.Turns.ONE ? "partner-single-actions.yaml" : "partner.yaml");
    }

    private static String read(String name) {
        try (InputStream in = Skeleton.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("no " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
