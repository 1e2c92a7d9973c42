package org.drillwright.print.command.planning;

import org.drillwright.check.Subject;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.printing.chosen.Languages;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.NamedFile;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.phone.EveningDrill;
import org.drillwright.print.phone.EveningPage;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/** A kept plan's page for phones. */
public final class EveningFile {

    private static final int KILOBYTE = 1000;

    private final Invocation run;
    private final NamedFile file;

    /** Refuses a place that can't be written before anything is planned. */
    public EveningFile(Invocation run, String shown) {
        this.run = run;
        this.file = new NamedFile(run, shown, Kind.PAGE);
    }

    /** Characters that the school's font lacks are no hindrance: a phone has fonts of its own. */
    public void write(Tonight tonight, Kept kept, Naming names) {
        SchoolFolder folder = tonight.folder();
        Family faces = SchoolFaces.of(folder);
        byte[] page = new EveningPage(folder.school(), kept, names, id -> drill(id, tonight), faces::file).write();
        file.write(page);
        int people = kept.plan().here().size();
        int size = Math.max(1, page.length / KILOBYTE);
        run.say(Message.of(EveningFile.class, "evening", file.shown(), people, size));
    }

    private static EveningDrill drill(String id, Tonight tonight) {
        SchoolFolder folder = tonight.folder();
        return new EveningDrill(
                tonight.plan().title(id),
                folder.entry(id)
                        .flatMap(SchoolFolder.Entry::subject)
                        .map((Subject subject) -> Languages.drill(subject, folder.school()))
                        .orElse(folder.school().language().word()));
    }
}
