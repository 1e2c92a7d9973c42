package org.drillwright.print.phone;

import java.util.List;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.model.School;
import org.drillwright.print.Example;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.pdf.Family;

/** Pages to be judged. */
final class Pages {

    private Pages() {}

    /** All drills of the example school. */
    static List<PhoneDrill> example() {
        return Example.drills().stream()
                .map(drill -> new PhoneDrill(Example.card(drill), "en"))
                .toList();
    }

    static PhoneDrill drill(Subject drill, String tag) {
        return new PhoneDrill(
                new CardSubject(
                        drill.drill(), drill.school(), Optional.empty(), false, List.of(), Optional.of(drill.replay())),
                tag);
    }

    static byte[] page(School school, List<PhoneDrill> drills) {
        Family faces = Family.dejaVu();
        return new PhonePage(school, "evening", drills, faces, faces::file).write();
    }
}
