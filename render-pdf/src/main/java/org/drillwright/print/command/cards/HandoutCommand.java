package org.drillwright.print.command.cards;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.documents.HandoutRun;
import org.drillwright.print.command.documents.PhoneRun;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SheetOption;
import org.drillwright.print.command.printing.InLanguage;
import org.drillwright.print.command.printing.PaperChoice;
import org.drillwright.print.command.printing.PrintOptions;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.NamedFile;
import org.drillwright.print.layout.words.Back;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a packet for an assistant. */
@Command(name = "handout", sortOptions = false)
public final class HandoutCommand extends CommandInSchool {

    @Spec
    CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "SET", arity = "1")
    String set = "";

    @Mixin
    CardOption card = new CardOption();

    @Mixin
    SheetOption sheet = new SheetOption();

    @Option(names = "--back", paramLabel = "BACK", defaultValue = "pictures")
    Back back = Back.PICTURES;

    @Mixin
    PaperOptions paper = new PaperOptions();

    @Option(names = "--out", paramLabel = "FILE")
    Optional<String> out = Optional.empty();

    @Option(names = "--html")
    boolean html;

    @Mixin
    LanguageOption language = new LanguageOption();

    @Option(names = "--draft")
    boolean draft;

    public HandoutCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        if (html) {
            mustBeForAPhone();
        }
        String shown = out.orElse(html ? "handout.html" : "handout.pdf");
        NamedFile file = new NamedFile(run, shown, html ? Kind.PAGE : Kind.PDF);
        return ifSound(filled(), CardsCommand.NOTHING_PRINTED, folder -> printed(folder, file));
    }

    private int printed(SchoolFolder folder, NamedFile file) {
        InLanguage printed = language.open(run, folder);
        boolean all = html ? new PhoneRun(run, folder, printed, draft).write(set, file) : print(folder, printed, file);
        return all ? Exit.DONE : Exit.MATERIAL;
    }

    /** What says how paper is used says nothing of a page. */
    private void mustBeForAPhone() {
        Stream.of("--card", "--sheet", "--back", "--duplex", "--shift", "--laminate")
                .filter(spec.commandLine().getParseResult()::hasMatchedOption)
                .findFirst()
                .ifPresent(option -> {
                    throw new CannotRun(Message.of(HandoutCommand.class, "handout-command.is.for.paper.leave", option));
                });
        out.filter(name -> !name.toLowerCase(Locale.ROOT).endsWith(".html")).ifPresent(name -> {
            throw new CannotRun(Message.of(HandoutCommand.class, "handout-command.with.html.the.file", name));
        });
    }

    private boolean print(SchoolFolder folder, InLanguage printed, NamedFile file) {
        School settings = folder.school();
        SheetSize size = sheet.of(settings);
        PrintOptions choices = paper.of(card.format(settings), PaperChoice.of(size), back, draft);
        return new HandoutRun(run, folder, printed, choices, size).print(set, file);
    }
}
