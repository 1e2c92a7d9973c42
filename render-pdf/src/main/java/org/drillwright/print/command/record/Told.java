package org.drillwright.print.command.record;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.check.Subject;
import org.drillwright.mark.PrintMark;
import org.drillwright.mark.PrintRecord;
import org.drillwright.mark.Printed;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.Translations;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.read.ReadTranslations;
import org.drillwright.read.Reading;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.TranslationFolder;
import org.drillwright.source.Nearest;
import org.drillwright.translation.Interpreter;

/** Tells by its mark which drill a card in the hand is, and whether it is current. */
public final class Told {

    private final SchoolFolder folder;
    private final PrintRecord record;

    public Told(SchoolFolder folder, PrintRecord record) {
        this.folder = folder;
        this.record = record;
    }

    /** One sentence or two. */
    public String of(PrintMark mark) {
        List<Printed> printed = record.of(mark);
        return current(mark)
                .map(drill -> named(drill) + ": this card is current." + when(printed))
                .or(() -> printed.isEmpty()
                        ? Optional.empty()
                        : Optional.of(older(printed.get(printed.size() - 1)) + " Take it off the ring."))
                .or(() -> inAnotherLanguage(mark))
                .orElseThrow(() -> unknown(mark));
    }

    /** A card that was made of a drill in another language, with the words that the school has in it now. */
    private Optional<String> inAnotherLanguage(PrintMark mark) {
        return Language.all().stream()
                .flatMap(language -> interpreter(language).stream()
                        .flatMap(interpreter -> folder.entries().stream()
                                .flatMap(entry -> entry.subject().stream())
                                .filter(drill ->
                                        interpreter.render(drill).drill().mark().equals(mark))
                                .map(drill -> named(drill.drill()) + ", in "
                                        + language.locale().getDisplayLanguage(Locale.ENGLISH)
                                        + ": this card is current.")))
                .findFirst();
    }

    /** None where the language's words cannot be read. */
    private Optional<Interpreter> interpreter(Language language) {
        try {
            Optional<Reading<ReadTranslations>> own = new TranslationFolder(folder).read(language);
            Optional<Translations> words = own.isEmpty()
                    ? Optional.of(Translations.NONE)
                    : own.get().value().map(ReadTranslations::translations);
            return words.map(known -> new Interpreter(folder.school(), language, known));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private Optional<Drill> current(PrintMark mark) {
        return drills().stream().filter(drill -> mark(drill).equals(mark)).findFirst();
    }

    private String older(Printed last) {
        String on = ", printed on " + last.date() + " (" + last.size().word() + ").";
        return drills().stream()
                .filter(drill -> drill.id().equals(last.drill()))
                .findFirst()
                .map(drill -> named(drill) + ": older version" + on + " The current mark is "
                        + mark(drill).shown() + ".")
                .orElseGet(() -> last.drill() + ": a drill that is no longer in the folder" + on);
    }

    private static String when(List<Printed> printed) {
        return printed.isEmpty()
                ? ""
                : " Printed on "
                        + printed.stream()
                                .map(line -> line.date() + " (" + line.size().word() + ")")
                                .collect(Collectors.joining(", "))
                        + ".";
    }

    private CannotRun unknown(PrintMark mark) {
        List<String> known = drills().stream().map(drill -> mark(drill).signs()).toList();
        String hint = Nearest.to(mark.signs(), known)
                .flatMap(PrintMark::read)
                .map(near -> " Is it " + near.shown() + "?")
                .orElse("");
        return new CannotRun("No drill of this school has the mark " + mark.shown()
                + ", and the print record doesn't have it: an older version printed without --changed, or a"
                + " typing error." + hint);
    }

    private PrintMark mark(Drill drill) {
        return PrintMark.of(drill, folder.school());
    }

    private List<Drill> drills() {
        return folder.entries().stream()
                .flatMap(entry -> entry.subject().stream())
                .map(Subject::drill)
                .toList();
    }

    private static String named(Drill drill) {
        return drill.title() + " (" + drill.id() + ")";
    }
}
