package org.drillwright.print.command.packet;

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

/** Prints the cards of a school with the pages that belong around them. */
public final class PacketRun {

    private final Invocation run;
    private final SchoolFolder folder;
    private final InLanguage language;
    private final PrintOptions choices;
    private final SheetSize sheet;

    public PacketRun(Invocation run, SchoolFolder folder, InLanguage language, PrintOptions choices, SheetSize sheet) {
        this.language = language;
        this.run = run;
        this.folder = folder;
        this.choices = choices;
        this.sheet = sheet;
    }

    /** A set for an assistant; whether all of it was printed. */
    public boolean handout(String set, NamedFile file) {
        ChosenDrills picks = language.picks(new DrillChooser(folder).sets(List.of(set)));
        DocumentInfo info =
                new DocumentInfo(picks.title(), language.school().language().locale());
        PacketDocument document = new PacketDocument(file, info, SchoolFaces.of(folder));
        boolean whole = new CardRun(run, language.school(), choices, document.faces())
                .print(
                        picks,
                        () -> new Handout(language.school(), language.word(set), picks, choices, sheet, document));
        language.tell();
        return whole;
    }
}
