package org.drillwright.print.command.documents;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.School;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.printing.InLanguage;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.printing.chosen.ChosenDrill;
import org.drillwright.print.command.printing.chosen.ChosenDrills;
import org.drillwright.print.command.printing.chosen.DrillChooser;
import org.drillwright.print.command.printing.chosen.PrintRefusal;
import org.drillwright.print.command.write.NamedFile;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.phone.PhoneDrill;
import org.drillwright.print.phone.PhonePage;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/** Writes a set as a page for a phone. Without {@code draft} all of it is written, or nothing; with it, all that can be. */
public final class PhoneRun {

    private static final int KILOBYTE = 1000;

    private final Invocation run;
    private final SchoolFolder folder;
    private final InLanguage language;
    private final boolean draft;

    public PhoneRun(Invocation run, SchoolFolder folder, InLanguage language, boolean draft) {
        this.language = language;
        this.run = run;
        this.folder = folder;
        this.draft = draft;
    }

    /** Whether all of the set was written. */
    public boolean write(String set, NamedFile file) {
        ChosenDrills picks = language.picks(new DrillChooser(folder).sets(List.of(set)));
        PrintRefusal refusal = PrintRefusal.of(run, draft, picks);
        List<PhoneDrill> drills = drills(picks);
        if (refusal.stops(drills.size())) {
            return refusal.close();
        }
        Family faces = SchoolFaces.of(folder);
        byte[] page = new PhonePage(language.school(), language.word(set), drills, faces, faces::file).write();
        file.write(page);
        Message count = Message.counted(PhoneRun.class, "drills", drills.size());
        int size = Math.max(1, page.length / KILOBYTE);
        run.say(Message.of(PhoneRun.class, "phone", file.shown(), count, size));
        language.tell();
        return refusal.close();
    }

    /** Characters that the school's font lacks are no hindrance: a phone has fonts of its own. */
    private List<PhoneDrill> drills(ChosenDrills picks) {
        School school = language.school();
        Labels labels = Labels.in(school.language());
        List<PhoneDrill> drills = new ArrayList<>();
        for (ChosenDrill pick : picks.drills()) {
            pick.entry()
                    .subject()
                    .map(drill -> pick.card(drill, school, labels))
                    .ifPresent(card ->
                            drills.add(new PhoneDrill(card, card.words().drill().toLanguageTag())));
        }
        return drills;
    }
}
