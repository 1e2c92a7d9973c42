package org.drillwright.print.command.documents;

import java.util.List;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.printing.CardRun;
import org.drillwright.print.command.printing.InLanguage;
import org.drillwright.print.command.printing.PrintOptions;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.printing.chosen.ChosenDrills;
import org.drillwright.print.command.printing.chosen.DrillChooser;
import org.drillwright.print.command.write.NamedFile;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.school.SchoolFolder;

/** Prints the cards of a set as a packet for an assistant. */
public final class HandoutRun {

    private final Invocation run;
    private final SchoolFolder folder;
    private final InLanguage language;
    private final PrintOptions choices;
    private final SheetSize sheet;

    public HandoutRun(Invocation run, SchoolFolder folder, InLanguage language, PrintOptions choices, SheetSize sheet) {
        this.language = language;
        this.run = run;
        this.folder = folder;
        this.choices = choices;
        this.sheet = sheet;
    }

    /** Whether all of the set was printed. */
    public boolean print(String set, NamedFile file) {
        ChosenDrills picks = language.picks(new DrillChooser(folder).sets(List.of(set)));
        DocumentInfo info =
                new DocumentInfo(picks.title(), language.school().language().locale());
        WholeDocument document = new WholeDocument(file, info, SchoolFaces.of(folder));
        boolean whole = new CardRun(run, language.school(), choices, document.faces())
                .print(
                        picks,
                        () -> new Handout(language.school(), language.word(set), picks, choices, sheet, document));
        language.tell();
        return whole;
    }
}
