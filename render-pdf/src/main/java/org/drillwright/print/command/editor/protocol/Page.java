package org.drillwright.print.command.editor.protocol;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.editing.Hover;
import org.drillwright.editing.Told;
import org.drillwright.print.command.editor.workspace.Document;
import org.drillwright.print.command.editor.workspace.OpenSchool;

/** A text in its school, as somebody asks of it. */
record Page(OpenSchool school, Document document) {

    Positions positions() {
        return new Positions(document.text());
    }

    /** What was found at a place, and then how it was read or what its key is for. */
    List<Told> hover(int offset) {
        List<Told> told = new ArrayList<>(Hover.rules(school.findings(document), offset));
        school.entry(document)
                .flatMap(entry -> entry.subject())
                .flatMap(subject -> Hover.reading(subject, offset))
                .or(() -> school.form(document).flatMap(form -> Hover.key(document.text(), form, offset)))
                .ifPresent(told::add);
        return told;
    }
}
