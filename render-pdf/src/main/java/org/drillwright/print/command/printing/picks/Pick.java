package org.drillwright.print.command.printing.picks;

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
 */
public record Pick(Entry entry, Optional<CardSubject.Place> place) {

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
        return new CardSubject(drill.drill(), school, place, !entry.isSound(), Unjudged.remark(this, labels), replay);
    }

    /** Whether there is a whole drill to print; a file never half-loads. */
    public boolean isReadable() {
        return entry.isWhole();
    }
}
