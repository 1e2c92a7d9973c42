package org.drillwright.print.command.printing.chosen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.drillwright.check.Subject;
import org.drillwright.model.School;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.text.Typefaces;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.source.Finding;

/** What of drills no card could print, told before anybody prints them. */
public final class Unprintable {

    private Unprintable() {}

    /** @param faces read only if a drill is written in more than Latin letters, or the school has a font of its own */
    public static List<Finding> findings(List<Entry> entries, School school, Supplier<? extends Typefaces> faces) {
        List<Subject> odd = new ArrayList<>();
        for (Entry entry : entries) {
            entry.subject()
                    .filter(drill -> school.font().isPresent() || !CardLayout.isPlain(card(drill, school)))
                    .ifPresent(odd::add);
        }
        if (odd.isEmpty()) {
            return List.of();
        }
        Glyphs glyphs = new Glyphs(faces.get());
        odd.forEach(drill -> glyphs.look(drill, card(drill, school)));
        return glyphs.findings();
    }

    private static CardSubject card(Subject drill, School school) {
        return new CardSubject(drill.drill(), school, Optional.empty(), false, List.of());
    }
}
