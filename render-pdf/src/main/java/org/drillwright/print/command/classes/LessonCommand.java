package org.drillwright.print.command.classes;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillwright.plan.evening.CardNeed;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.DataFile;
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
import picocli.CommandLine.Option;

/** Fits the drills of a class into its time. */
@Command(name = "lesson", sortOptions = false)
public final class LessonCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Mixin
    NamedClass named = new NamedClass();

    @Option(names = "--out", paramLabel = "FILE")
    Optional<String> out = Optional.empty();

    private Optional<DataFile> data = Optional.empty();

    public LessonCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        Optional<SheetFile> file = named.sheetFile(out).map(name -> new SheetFile(run, name));
        data = named.dataFile(run, out);
        return named.tonight(run, school).map(found -> told(found, file)).orElse(Exit.MATERIAL);
    }

    private int told(Tonight tonight, Optional<SheetFile> file) {
        Shown shown = Wall.of(tonight, Optional.empty()).shown(List.of());
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
                                    tonight.plan(), pairs, settings, named.sheet(settings), shown.mark(), faces));
            run.say(LessonText.sentence(tonight.plan().lesson()));
            tonight.plan().lesson().advice().forEach(advice -> run.say(advice.sentence()));
        } else {
            named.tell(
                    run,
                    data,
                    () -> LessonText.of(tonight.plan(), cards, run.language()),
                    () -> LessonJson.of(tonight.plan(), cards, run.language()));
        }
        return tonight.plan().lesson().fits() ? Exit.DONE : Exit.MATERIAL;
    }
}
