package org.drillwright.print.command.classes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.evening.Heed;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SheetOption;
import org.drillwright.print.command.planning.SheetFile;
import org.drillwright.print.command.planning.Shown;
import org.drillwright.print.command.planning.Tonight;
import org.drillwright.print.command.planning.Wall;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.sheet.HandWord;
import org.drillwright.print.sheet.HandWords;
import org.drillwright.print.sheet.LessonSheet;
import org.drillwright.print.sheet.SubstituteSheet;
import org.drillwright.print.sheet.wall.EveningSheet;
import org.drillwright.print.text.Typefaces;
import org.drillwright.register.History;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints all that somebody needs who takes a class for once. */
@Command(name = "packet", sortOptions = false)
public final class PacketCommand extends PeopleCommand {

    @Parameters(paramLabel = "CLASS", arity = "1")
    String named = "";

    @Option(names = "--out", paramLabel = "FILE", defaultValue = "packet.pdf")
    String out = "packet.pdf";

    @Mixin
    SheetOption sheet = new SheetOption();

    @Mixin
    InitialsOption initials = new InitialsOption();

    public PacketCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        SheetFile file = new SheetFile(run, out);
        return inClass(named, tonight -> printed(tonight, file));
    }

    private int printed(Tonight tonight, SheetFile file) {
        Wall wall = Wall.of(tonight);
        Shown shown = wall.shown();
        boolean pairs = !shown.plan().rounds().isEmpty();
        Optional<Kept> kept = pairs ? Optional.of(wall.keep(shown)) : Optional.empty();
        String mark = kept.map(one -> one.mark().shown()).orElse("");
        file.write(
                tonight.folder(),
                HandWords.in(tonight.folder().school().language())
                        .of(HandWord.PACKET_OF, tonight.plan().brief().date()),
                faces -> pages(tonight, shown.plan(), mark, faces));
        shown.standing().remarks().forEach(run::say);
        kept.ifPresent(one -> run.say(wall.sentence(shown, one)));
        run.say(Message.of(PacketCommand.class, "the.cards", named));
        return Tonight.isShort(shown.plan()) ? Exit.MATERIAL : Exit.DONE;
    }

    private List<Frame> pages(Tonight tonight, PairingPlan pairs, String mark, Typefaces faces) {
        School settings = tonight.folder().school();
        SheetSize size = sheet.of(settings);
        Naming names = initials.of(tonight.folder(), tonight.roster());
        List<Heed> people =
                Heed.of(tonight.plan(), tonight.roster(), tonight.classes().history());
        List<String> helpers = tonight.plan().pairing().helpers().stream()
                .filter(name -> !name.equals(History.INSTRUCTOR))
                .map(names::of)
                .toList();
        List<Frame> pages = new ArrayList<>(
                SubstituteSheet.pages(tonight.plan(), people, helpers, names, settings, size, mark, faces));
        pages.addAll(LessonSheet.pages(tonight.plan(), pairs, settings, size, mark, faces));
        if (!pairs.rounds().isEmpty()) {
            pages.addAll(EveningSheet.of(tonight.plan(), pairs, names, size, settings, mark, faces)
                    .pages());
        }
        return pages;
    }
}
