package org.drillwright.print.command.printing.picks;

import java.util.List;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.model.School;
import org.drillwright.phrase.Replay;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder.Entry;

/**
 * A drill that was picked for printing.
 *
 * @param place where it stands in its set, if it is in one
 * @param needs where the drills stand that it needs, as far as they are in sets
 * @param leadsTo where the drills stand that need it
 */
public record Pick(
        Entry entry,
        Optional<CardSubject.Place> place,
        List<CardSubject.Place> needs,
        List<CardSubject.Place> leadsTo) {

    public Pick {
        needs = List.copyOf(needs);
        leadsTo = List.copyOf(leadsTo);
    }

    /** A drill that is in no set. */
    public static Pick alone(Entry entry) {
        return new Pick(entry, Optional.empty(), List.of(), List.of());
    }

    /** The same place in its set for a drill read anew. */
    public Pick of(Entry other) {
        return new Pick(other, place, needs, leadsTo);
    }

    public String id() {
        return DrillFiles.id(entry.file());
    }

    /** What its card says, marked as a draft if the drill has errors. */
    public CardSubject card(Subject drill, School school, Labels labels) {
        return card(drill, school, labels, Optional.of(drill.replay()));
    }

    /** The same without its pictures, for who looks at the words alone. */
    public CardSubject words(Subject drill, School school, Labels labels) {
        return card(drill, school, labels, Optional.empty());
    }

    private CardSubject card(Subject drill, School school, Labels labels, Optional<Replay> replay) {
        return new CardSubject(
                drill.drill(),
                school,
                place,
                !entry.isSound(),
                Unjudged.remark(this, labels),
                needs,
                leadsTo,
                Languages.of(drill, school),
                replay);
    }

    /** Whether there is a whole drill to print; a file never half-loads. */
    public boolean isReadable() {
        return entry.isWhole();
    }
}
