package org.drillwright.print.command.classes;

import java.util.Optional;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
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

/** Lays lanes in a hall. */
@Command(name = "hall", sortOptions = false)
public final class HallCommand extends PeopleCommand {

    @Mixin
    NamedClass named = new NamedClass();

    public HallCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        Optional<SheetFile> file = named.sheetFile().map(name -> new SheetFile(run, name));
        TextOrData answer = named.answer(run);
        return inClass(named.name, found -> told(found, file, answer));
    }

    private int told(Tonight tonight, Optional<SheetFile> file, TextOrData answer) {
        LaneLayout layout =
                tonight.plan().lanes().orElseThrow(() -> new CannotRun(Message.of(HallCommand.class, "no.hall")));
        Shown shown = Wall.of(tonight).shown();
        PairingPlan pairs = shown.plan();
        Floor floor = Floor.of(layout, places(pairs));
        if (file.isPresent()) {
            var settings = tonight.folder().school();
            file.get()
                    .write(
                            tonight.folder(),
                            HandWords.in(settings.language()).text(HandWord.HALL),
                            faces -> HallSheet.pages(
                                    floor, pairs, named.sheet.of(settings), settings, shown.mark(), faces));
            run.say(layout.sentence());
        } else {
            answer.tell(
                    () -> HallText.of(floor, pairs, run.language()), () -> HallJson.of(floor, pairs, run.language()));
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
