package org.drillwright.print.command.classes;

import java.util.List;
import java.util.Optional;
import org.drillwright.plan.evening.CardNeed;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.SheetFile;
import org.drillwright.print.command.planning.Shown;
import org.drillwright.print.command.planning.Tonight;
import org.drillwright.print.command.planning.Wall;
import org.drillwright.print.sheet.HandWord;
import org.drillwright.print.sheet.HandWords;
import org.drillwright.print.sheet.LessonSheet;
import org.drillwright.report.plan.LessonJson;
import org.drillwright.report.plan.LessonText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Fits the drills of a class into its time. */
@Command(name = "lesson", sortOptions = false)
public final class LessonCommand extends PeopleCommand {

    @Mixin
    NamedClass named = new NamedClass();

    public LessonCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        Optional<SheetFile> file = named.sheetFile().map(name -> new SheetFile(run, name));
        TextOrData answer = named.answer(run);
        return inClass(named.name, found -> told(found, file, answer));
    }

    private int told(Tonight tonight, Optional<SheetFile> file, TextOrData answer) {
        Shown shown = Wall.of(tonight).shown();
        PairingPlan pairs = shown.plan();
        var settings = tonight.folder().school();
        List<CardNeed> cards = CardNeed.of(settings, tonight.plan(), pairs);
        if (file.isPresent()) {
            file.get()
                    .write(
                            tonight.folder(),
                            HandWords.in(settings.language())
                                    .of(
                                            HandWord.LESSON_OF,
                                            tonight.plan().brief().date()),
                            faces -> LessonSheet.pages(
                                    tonight.plan(), pairs, settings, named.sheet.of(settings), shown.mark(), faces));
            run.say(LessonText.sentence(tonight.plan().lesson()));
            tonight.plan().lesson().advice().forEach(advice -> run.say(advice.sentence()));
        } else {
            answer.tell(
                    () -> LessonText.of(tonight.plan(), cards, run.language()),
                    () -> LessonJson.of(tonight.plan(), cards, run.language()));
        }
        return tonight.plan().lesson().fits() ? Exit.DONE : Exit.MATERIAL;
    }
}
