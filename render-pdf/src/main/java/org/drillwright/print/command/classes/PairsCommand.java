package org.drillwright.print.command.classes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.model.School;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.pair.Pairing;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.WalkChoice;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.EveningFile;
import org.drillwright.print.command.planning.People;
import org.drillwright.print.command.planning.SheetFile;
import org.drillwright.print.command.planning.Shown;
import org.drillwright.print.command.planning.Tonight;
import org.drillwright.print.command.planning.Wall;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.sheet.HandWord;
import org.drillwright.print.sheet.HandWords;
import org.drillwright.print.sheet.WallSheet;
import org.drillwright.print.sheet.wall.EveningSheet;
import org.drillwright.print.text.Typefaces;
import org.drillwright.report.plan.PairsJson;
import org.drillwright.report.plan.PairsText;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans who works with whom. */
@Command(name = "pairs", sortOptions = false)
public final class PairsCommand extends PeopleCommand {

    @Mixin
    NamedClass named = new NamedClass();

    @Option(names = "--by", paramLabel = "ORDER", defaultValue = "name")
    WallForm by = WallForm.NAME;

    @Option(names = "--slips")
    boolean slips;

    @Option(names = "--html")
    boolean html;

    @Option(names = "--walk", paramLabel = "FORMINGS")
    Optional<WalkForm> walk = Optional.empty();

    @Mixin
    InitialsOption initials = new InitialsOption();

    @Mixin
    StageOptions stages = new StageOptions();

    @Option(names = "--keep")
    boolean keep;

    @Option(names = "--plan", paramLabel = "MARK")
    Optional<String> mark = Optional.empty();

    @Option(names = "--why", arity = "2", paramLabel = "NAME")
    List<String> why = new ArrayList<>();

    public PairsCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        mustGoTogether();
        Optional<Output> output = named.sheetFile().map(this::output);
        TextOrData answer = named.answer(run);
        return inClass(named.name, found -> told(found, output, answer));
    }

    /** Where a plan is written to. */
    private interface Output {

        /** Refuses a plan that can't be written, before it is kept. */
        void check(Tonight tonight, PairingPlan plan);

        void write(Tonight tonight, PairingPlan plan, Kept kept);
    }

    private Output output(String name) {
        return html ? new Page(new EveningFile(run, name)) : new Sheet(new SheetFile(run, name));
    }

    private final class Page implements Output {
        private final EveningFile file;

        Page(EveningFile file) {
            this.file = file;
        }

        /** A phone has letters of its own. */
        @Override
        public void check(Tonight tonight, PairingPlan plan) {}

        @Override
        public void write(Tonight tonight, PairingPlan plan, Kept kept) {
            file.write(tonight, kept, initials.of(tonight.folder(), tonight.roster()));
        }
    }

    private final class Sheet implements Output {
        private final SheetFile file;

        Sheet(SheetFile file) {
            this.file = file;
        }

        @Override
        public void check(Tonight tonight, PairingPlan plan) {
            file.mustBePrintable(tonight.folder(), faces -> pages(tonight, plan, "", faces));
        }

        @Override
        public void write(Tonight tonight, PairingPlan plan, Kept kept) {
            file.write(
                    tonight.folder(),
                    HandWords.in(tonight.folder().school().language())
                            .of(HandWord.PARTNERS_OF, tonight.plan().brief().date()),
                    faces -> pages(tonight, plan, kept.mark().shown(), faces));
        }
    }

    private void mustGoTogether() {
        boolean byRound = by == WallForm.ROUND;
        if (named.out.isEmpty() && (slips || byRound || html)) {
            throw new CannotRun(
                    html
                            ? Message.of(PairsCommand.class, "html.needs.page")
                            : Message.of(PairsCommand.class, "needs.pdf", slips ? "--slips" : "--by"));
        }
        if (html && (slips || byRound || named.sheet.isGiven())) {
            throw new CannotRun(
                    Message.of(PairsCommand.class, "for.paper", slips ? "--slips" : byRound ? "--by" : "--sheet"));
        }
        if (slips && byRound) {
            throw new CannotRun(Message.of(PairsCommand.class, "wall.or.slips"));
        }
        boolean isPage = named.out
                .filter(name -> name.toLowerCase(Locale.ROOT).endsWith(".html"))
                .isPresent();
        if (html && !isPage) {
            throw new CannotRun(Message.of(PairsCommand.class, "html.ending", named.out.orElse("")));
        }
        if (isPage && !html) {
            throw new CannotRun(Message.of(PairsCommand.class, "page.name", named.out.orElse("")));
        }
    }

    private void mustHavePeople(Tonight tonight) {
        if (tonight.plan().here().isEmpty()) {
            throw new CannotRun(Message.of(
                    PairsCommand.class,
                    tonight.roster().people().isEmpty() ? "nobody.comes.roster" : "nobody.comes.away",
                    named.name));
        }
    }

    private int told(Tonight read, Optional<Output> output, TextOrData answer) {
        mustHavePeople(read);
        Tonight tonight = walk.map(form -> read.moving(form.movement())).orElse(read);
        Wall wall = Wall.of(tonight, mark);
        Shown shown = wall.shown(stages.typed().substitutions());
        if (!why.isEmpty()) {
            return why(tonight, shown);
        }
        PairingPlan plan = shown.plan();
        if ((output.isPresent() || keep) && plan.rounds().size() == plan.firstPlanned()) {
            run.sayWhyNot(
                    keep
                            ? Message.of(PairsCommand.class, "nothing.kept", named.name)
                            : Message.of(PairsCommand.class, "nothing.printed", named.name));
            return Exit.MATERIAL;
        }
        if (output.isPresent()) {
            print(tonight, shown, wall, output.get());
        } else if (keep) {
            run.say(wall.sentence(shown, wall.keep(shown)));
        } else {
            List<WalkChoice> choices = shown.pairing().map(Pairing::choices).orElse(List.of());
            answer.tell(
                    () -> PairsText.of(tonight.plan(), plan, choices, shown.standing(), Naming.full(), run.language()),
                    () -> PairsJson.of(tonight.plan(), plan, choices, shown.standing(), Naming.full(), run.language()));
        }
        return Tonight.isShort(plan) ? Exit.MATERIAL : Exit.DONE;
    }

    private int why(Tonight tonight, Shown shown) {
        People people = new People(tonight.roster());
        String one = people.name(why.get(0));
        String other = people.name(why.get(1));
        shown.pairing()
                .orElseThrow(() -> new CannotRun(Message.of(PairsCommand.class, "reason.gone", shown.mark())))
                .why(one, other)
                .forEach(run::say);
        return Exit.DONE;
    }

    private void print(Tonight tonight, Shown shown, Wall wall, Output output) {
        output.check(tonight, shown.plan());
        Kept kept = wall.keep(shown);
        output.write(tonight, shown.plan(), kept);
        shown.plan().facts().forEach(run::say);
        shown.plan().verdict().ifPresent(verdict -> run.say(verdict.sentence()));
        shown.standing().remarks().forEach(run::say);
        run.say(wall.sentence(shown, kept));
    }

    private List<Frame> pages(Tonight tonight, PairingPlan plan, String mark, Typefaces faces) {
        School settings = tonight.folder().school();
        Naming names = initials.of(tonight.folder(), tonight.roster());
        if (by == WallForm.ROUND) {
            return WallSheet.pages(tonight.plan(), plan, names, named.sheet.of(settings), settings, mark, faces);
        }
        EveningSheet sheet =
                EveningSheet.of(tonight.plan(), plan, names, named.sheet.of(settings), settings, mark, faces);
        return slips ? sheet.slips() : sheet.pages();
    }
}
