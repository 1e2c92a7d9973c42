package org.drillwright.print.command.classes;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.DataFile;
import org.drillwright.print.command.planning.SheetFile;
import org.drillwright.print.command.planning.Shown;
import org.drillwright.print.command.planning.Tonight;
import org.drillwright.print.command.planning.Wall;
import org.drillwright.print.sheet.HallSheet;
import org.drillwright.print.sheet.HandWord;
import org.drillwright.print.sheet.HandWords;
import org.drillwright.report.plan.HallJson;
import org.drillwright.report.plan.HallText;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lays lanes in a hall. */
@Command(name = "hall", sortOptions = false)
public final class HallCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Mixin
    NamedClass named = new NamedClass();

    @Option(names = "--out", paramLabel = "FILE")
    Optional<String> out = Optional.empty();

    private Optional<DataFile> data = Optional.empty();

    public HallCommand(Invocation run, SchoolOption school) {
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
        LaneLayout layout =
                tonight.plan().lanes().orElseThrow(() -> new CannotRun(Message.of(HallCommand.class, "no.hall")));
        Shown shown = Wall.of(tonight, Optional.empty()).shown(List.of());
        PairingPlan pairs = shown.plan();
        Floor floor = Floor.of(layout, places(pairs));
        if (file.isPresent()) {
            var settings = tonight.folder().school();
            file.get()
                    .write(
                            tonight.folder(),
                            HandWords.in(settings.language()).text(HandWord.HALL),
                            faces -> HallSheet.pages(
                                    floor, pairs, named.sheet(settings), settings, shown.mark(), faces));
            run.say(layout.sentence());
        } else {
            named.tell(
                    run,
                    data,
                    () -> HallText.of(floor, pairs, run.language()),
                    () -> HallJson.of(floor, pairs, run.language()));
        }
        return layout.count() == 0 ? Exit.MATERIAL : Exit.DONE;
    }

    private static int places(PairingPlan pairs) {
        return pairs.rounds().stream()
                .flatMap(round -> round.groups().stream())
                .mapToInt(group -> group.place())
                .max()
                .orElse(0);
    }
}
