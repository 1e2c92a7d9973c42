package org.drillwright.print.command.cards;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.drillwright.model.CardSize;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.packet.PacketRun;
import org.drillwright.print.command.packet.PhoneRun;
import org.drillwright.print.command.printing.Choices;
import org.drillwright.print.command.printing.Edge;
import org.drillwright.print.command.printing.InLanguage;
import org.drillwright.print.command.printing.Paper;
import org.drillwright.print.command.write.OutputFile;
import org.drillwright.print.impose.Laminate;
import org.drillwright.print.impose.Shift;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.words.Back;
import org.drillwright.school.SchoolFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a packet for an assistant. */
@Command(
        name = "handout",
        header = "Prints a set for an assistant: cover, safety card, cards and a table to sign; or a page for a phone.",
        description = "One PDF, printed on both sides of the paper. The cover and the table are full pages; the"
                + " cards are laid out on sheets at actual size, as many as fit, in teaching order, to be cut"
                + " out for the ring. With --html, one page for a phone that needs no network: the safety card,"
                + " the cards in large type, each phrase count by count, and a list to search and tick off.%n",
        sortOptions = false,
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {
            Exit.DONE_TEXT,
            "1:a drill or the settings have errors, and nothing was printed; with --draft: something cannot be"
                    + " printed at all and was left out",
            Exit.UNABLE_TEXT
        })
public final class HandoutCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Spec
    CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "SET", arity = "1", description = "A set in school.yaml, or a level.")
    String set = "";

    @Option(
            names = "--card",
            paramLabel = "SIZE",
            description = "The cards' size: a7, a6, a5; 3x5, 4x6, 5x8 (inches), quarter-letter, half-letter;"
                    + " wall-a4, wall-a3. Normally as set in school.yaml, or a6; where its sheet is"
                    + " letter, quarter-letter.")
    Optional<CardSize> card = Optional.empty();

    @Option(
            names = "--large-print",
            description = "For poor eyesight: the same paper with all type one size larger, so more of a drill runs"
                    + " over to the back.")
    boolean largePrint;

    @Option(
            names = "--sheet",
            paramLabel = "SIZE",
            description = "The paper: a4, a3, letter or legal. Normally as set in school.yaml, or a4.")
    Optional<SheetSize> sheet = Optional.empty();

    @Option(
            names = "--back",
            paramLabel = "BACK",
            defaultValue = "pictures",
            description = "What is printed on the back of each card: pictures, none or safety. Normally pictures.")
    Back back = Back.PICTURES;

    @Option(
            names = "--duplex",
            paramLabel = "EDGE",
            defaultValue = "long",
            description = "The edge over which the printer turns the sheet: long or short. Normally long.")
    Edge duplex = Edge.LONG;

    @Option(
            names = "--shift",
            paramLabel = "X,Y",
            description = "Moves all backs this many millimetres to the right and down; see cards --test-sheet.")
    Optional<Shift> shift = Optional.empty();

    @Option(
            names = "--laminate",
            paramLabel = "HOW",
            defaultValue = "none",
            description = "none; pouch: cards are cut first; or sheet: the sheet is laminated first.")
    Laminate laminate = Laminate.NONE;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "The file to write. Normally handout.pdf (or handout.html), in the current folder. A"
                    + " PDF, or a page made by this program, of that name is replaced.")
    Optional<String> out = Optional.empty();

    @Option(
            names = "--html",
            description = "Instead of a PDF, one page for a phone, as a file that can be sent and opened anywhere.")
    boolean html;

    @Mixin
    LanguageOption language = new LanguageOption();

    @Option(names = "--draft", description = "Also prints drills with errors, marked DRAFT.")
    boolean draft;

    public HandoutCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    private Format format(School settings) {
        Format usual = Format.of(card.orElse(settings.card()));
        return largePrint ? usual.inLargePrint() : usual;
    }

    @Override
    public Integer call() {
        if (html) {
            mustBeForAPhone();
        }
        String shown = out.orElse(html ? "handout.html" : "handout.pdf");
        Path target = Locations.file(run.here(), shown);
        new OutputFile(target).mustBeFree();
        SchoolFolder folder = Schools.openFilled(run, new SchoolSearch(run).find(school.folder(), List.of()));
        if (Schools.isRefused(folder, run.out(), run, "Nothing was printed")) {
            return Exit.MATERIAL;
        }
        InLanguage printed = language.open(run, folder);
        boolean all = html
                ? new PhoneRun(run, folder, printed, draft).write(set, target, shown)
                : print(folder, printed, target, shown);
        return all ? Exit.DONE : Exit.MATERIAL;
    }

    /** What says how paper is used says nothing of a page. */
    private void mustBeForAPhone() {
        Stream.of("--card", "--sheet", "--back", "--duplex", "--shift", "--laminate")
                .filter(spec.commandLine().getParseResult()::hasMatchedOption)
                .findFirst()
                .ifPresent(option -> {
                    throw new CannotRun(option + " is for paper; leave out that option, or --html.");
                });
        out.filter(name -> !name.toLowerCase(Locale.ROOT).endsWith(".html")).ifPresent(name -> {
            throw new CannotRun("With --html the file name must end in .html, so that a phone knows what it is;"
                    + " '" + name
                    + "' does not.");
        });
    }

    private boolean print(SchoolFolder folder, InLanguage printed, Path target, String shown) {
        SheetSize paper = sheet.orElse(folder.school().sheet());
        Choices choices = new Choices(
                format(folder.school()),
                Paper.of(paper),
                back,
                Optional.of(duplex.duplex()),
                laminate,
                shift.orElse(Shift.NONE),
                draft);
        return new PacketRun(run, folder, printed, choices, paper).handout(set, target, shown);
    }
}
