package org.drillwright.print.command.write;

import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.read.ReadingLimits;
import org.drillwright.wording.Message;

/** The settings that a school begins with: its name and what it prints on; the rest is as in any school. */
public final class SchoolSkeleton {

    private static final String TEXT = """
            # The settings of your school. Lines that begin with # are remarks for
            # people. Keep the indents as they are: spaces, no tabs.

            # The name, as printed on cards and sheets.
            name: {name}

            # The steps of your course, the easiest first; each drill names one of
            # them. turns: how much one person does on one count (one, joined, free).
            # blades: what the blades do (none, by-the-count, free).
            levels:
              - {name: beginner, turns: one, blades: none}
              - {name: intermediate, turns: joined, blades: by-the-count}
              - {name: training, turns: free, blades: free}

            # What you print on (a4, a3, letter or legal), and the language of the
            # words the program adds to a card (en, fr and others).
            sheet: {sheet}
            language: {language}
            """;

    private SchoolSkeleton() {}

    /** @param name of the school */
    public static String of(String name, SheetSize sheet, Language language) {
        String clean = name.replaceAll("[\\p{Cc}\\p{Cf}\\s]+", " ").strip();
        if (clean.isEmpty() || clean.length() > ReadingLimits.SHORT_TEXT) {
            throw new CannotRun(
                    Message.of(SchoolSkeleton.class, "school-skeleton.a.schools.name.has", ReadingLimits.SHORT_TEXT));
        }
        return TEXT.replace("{sheet}", sheet.word())
                .replace("{language}", language.word())
                .replace("{name}", Quoted.of(clean));
    }
}
