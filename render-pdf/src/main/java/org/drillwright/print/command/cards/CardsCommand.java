package org.drillwright.print.command.cards;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.Selection;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.printing.CardRun;
import org.drillwright.print.command.printing.InLanguage;
import org.drillwright.print.command.printing.OutputTarget;
import org.drillwright.print.command.printing.PaperChoice;
import org.drillwright.print.command.printing.PrintOptions;
import org.drillwright.print.command.printing.SchoolFaces;
import org.drillwright.print.command.printing.TestSheet;
import org.drillwright.print.command.printing.chosen.ChosenDrills;
import org.drillwright.print.command.printing.chosen.DrillChooser;
import org.drillwright.print.command.prints.Reprint;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PngPictures;
import org.drillwright.report.DisplayWidth;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints cards. */
@Command(name = "cards", sortOptions = false)
public final class CardsCommand extends CommandInSchool {

    static final Message NOTHING_PRINTED = Message.of(CardsCommand.class, "cards-command.nothing.was.printed");

    @Parameters(paramLabel = "PATH", arity = "0..*")
    List<String> paths = new ArrayList<>();

    @Option(names = "--set", paramLabel = "SET")
    List<String> sets = new ArrayList<>();

    @Option(names = "--class", paramLabel = "CLASS")
    Optional<String> lesson = Optional.empty();

    @Mixin
    CardOption card = new CardOption();

    @Option(names = "--sheet", paramLabel = "SIZE")
    Optional<PaperChoice> sheet = Optional.empty();

    @Option(names = "--back", paramLabel = "BACK", defaultValue = "none")
    Back back = Back.NONE;

    @Mixin
    PaperOptions paper = new PaperOptions();

    @Option(names = "--out", paramLabel = "FILE")
    Optional<String> out = Optional.empty();

    @Option(names = "--png", paramLabel = "DPI")
    Optional<Integer> png = Optional.empty();

    @Option(names = "--test-sheet")
    boolean testSheet;

    @Option(names = "--changed")
    boolean changed;

    @Option(names = "--date", paramLabel = "DAY")
    Optional<LocalDate> date = Optional.empty();

    @Mixin
    LanguageOption language = new LanguageOption();

    @Option(names = "--draft")
    boolean draft;

    public CardsCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        if (!sets.isEmpty() && !paths.isEmpty()) {
            throw new CannotRun(Message.of(CardsCommand.class, "cards-command.name.a.set.or"));
        }
        if (lesson.isPresent() && !(sets.isEmpty() && paths.isEmpty())) {
            throw new CannotRun(Message.of(CardsCommand.class, "cards-command.name.a.class.or"));
        }
        mustGoTogether();
        png.filter(dots -> dots < PngPictures.LEAST || dots > PngPictures.MOST).ifPresent(dots -> {
            throw new CannotRun(Message.of(
                    CardsCommand.class,
                    "cards-command.pictures.have.from.to",
                    PngPictures.LEAST,
                    PngPictures.MOST,
                    dots));
        });
        OutputTarget target = target();
        if (png.isEmpty()) {
            new WholeFile(target.path()).mustBeFree(Kind.PDF);
        }
        return ifSound(filled(paths), NOTHING_PRINTED, folder -> print(folder, target));
    }

    private int print(SchoolFolder folder, OutputTarget target) {
        School settings = folder.school();
        Family faces = SchoolFaces.of(folder);
        if (testSheet) {
            return printTestSheet(settings, faces, target);
        }
        InLanguage printed = language.open(run, folder);
        PrintOptions choices = paper.of(card.format(settings), sheet(settings), back, draft);
        CardRun cards = new CardRun(run, printed.school(), choices, faces);
        return print(folder, printed, cards, target) ? Exit.DONE : Exit.MATERIAL;
    }

    private boolean print(SchoolFolder folder, InLanguage printed, CardRun cards, OutputTarget target) {
        Optional<ChosenDrills> picked = picks(folder).map(printed::picks);
        if (picked.isEmpty()) {
            return false;
        }
        if (!changed) {
            boolean whole = cards.print(picked.get(), target);
            printed.tell();
            if (!sets.isEmpty()) {
                tellLeftOut(folder);
            }
            return whole;
        }
        LocalDate day = date.orElseGet(run::today);
        return new Reprint(run, folder, printed.school(), card.size(folder.school())).run(picked.get(), day, picks -> {
            boolean whole = cards.print(picks, target);
            printed.tell(picks);
            return whole;
        });
    }

    /** A set that is a list doesn't grow by itself. */
    private void tellLeftOut(SchoolFolder folder) {
        List<String> left = new DrillChooser(folder).leftOut(sets);
        if (!left.isEmpty()) {
            run.say(Message.of(
                    CardsCommand.class, "cards-command.note.in.no.set", DisplayWidth.shown(String.join(", ", left))));
        }
    }

    /** Only whole cards on paper are worth a line in the record. */
    private void mustGoTogether() {
        if (changed && (draft || testSheet || png.isPresent())) {
            throw new CannotRun(Message.of(
                    CardsCommand.class,
                    "cards-command.changed.prints.cards.for",
                    (draft ? "--draft" : testSheet ? "--test-sheet" : "--png")));
        }
        if (!changed && date.isPresent()) {
            throw new CannotRun(Message.of(CardsCommand.class, "cards-command.date.is.the.day"));
        }
    }

    private int printTestSheet(School settings, Family faces, OutputTarget target) {
        SheetSize size = sheet.orElse(PaperChoice.of(settings.sheet()))
                .sheet()
                .orElseThrow(() -> new CannotRun(Message.of(CardsCommand.class, "cards-command.a.test.sheet.needs")));
        new WholeFile(target.path()).write(TestSheet.of(settings, size, paper.duplex(), paper.shift(), faces));
        run.say(Message.of(CardsCommand.class, "cards-command.print.it.on.both", target.shown()));
        return Exit.DONE;
    }

    /** A sheet for the wall is its own page. */
    private PaperChoice sheet(School settings) {
        return sheet.orElse(card.size(settings).isForTheWall() ? PaperChoice.CARD : PaperChoice.of(settings.sheet()));
    }

    /** Nothing if the class cannot be planned; why is shown. */
    private Optional<ChosenDrills> picks(SchoolFolder folder) {
        DrillChooser picking = new DrillChooser(folder);
        if (lesson.isPresent()) {
            return ClassRun.of(run, folder)
                    .tonight(lesson.get())
                    .map(tonight -> picking.these(tonight.plan().inOrder().stream()
                            .flatMap(drill -> folder.entry(drill.id()).stream())
                            .toList()));
        }
        if (!sets.isEmpty()) {
            return Optional.of(picking.sets(sets));
        }
        Selection selection = Selection.of(folder, run, paths);
        return Optional.of(selection.whole() ? picking.whole() : picking.these(selection.entries()));
    }

    private OutputTarget target() {
        String usual = png.isPresent() ? "cards" : testSheet ? "test-sheet.pdf" : "cards.pdf";
        String shown = out.orElse(usual);
        Path path = Locations.file(run.here(), shown);
        return new OutputTarget(path, shown, png.map(OptionalInt::of).orElseGet(OptionalInt::empty));
    }
}
