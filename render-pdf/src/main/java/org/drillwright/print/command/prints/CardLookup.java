package org.drillwright.print.command.prints;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
import org.drillwright.terms.Terms;
import org.drillwright.translation.Interpreter;
import org.drillwright.wording.Message;

/** Tells by its mark which drill a card in the hand is, and whether it is current. */
public final class CardLookup {

    private final SchoolFolder folder;
    private final PrintRecord record;

    public CardLookup(SchoolFolder folder, PrintRecord record) {
        this.folder = folder;
        this.record = record;
    }

    /** One sentence or two. */
    public Message of(PrintMark mark) {
        List<Printed> printed = record.of(mark);
        return current(mark)
                .map(drill -> Message.of(CardLookup.class, "current", drill.title(), drill.id())
                        .then(when(printed)))
                .or(() -> mayBeInAnother(printed)
                        ? inAnotherLanguage(mark).map(said -> said.then(when(printed)))
                        : Optional.empty())
                .or(() -> printed.isEmpty()
                        ? Optional.empty()
                        : Optional.of(older(printed.get(printed.size() - 1))
                                .then(Message.of(CardLookup.class, "take.it.off"))))
                .orElseThrow(() -> unknown(mark));
    }

    /** Whoever printed without a note may have done so in any language. */
    private static boolean mayBeInAnother(List<Printed> printed) {
        return printed.isEmpty()
                || printed.stream().anyMatch(line -> line.language().isPresent());
    }

    /** A card that was made of a drill in another language, with the words that the school has in it now. */
    private Optional<Message> inAnotherLanguage(PrintMark mark) {
        return Language.all().stream()
                .flatMap(language -> interpreter(language).stream()
                        .flatMap(interpreter -> subjects()
                                .filter(drill ->
                                        interpreter.render(drill).drill().mark().equals(mark))
                                .map(Subject::drill)
                                .map(drill -> Message.of(
                                        CardLookup.class,
                                        "current.in",
                                        drill.title(),
                                        drill.id(),
                                        Terms.of(language)))))
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

    private Message older(Printed last) {
        return subjects()
                .filter(drill -> drill.drill().id().equals(last.drill()))
                .findFirst()
                .map(drill -> last.language()
                        .map(language -> older(last, drill, language))
                        .orElseGet(() -> older(last, drill.drill())))
                .orElseGet(() -> Message.of(
                        CardLookup.class,
                        "gone",
                        last.drill(),
                        Message.day(last.date()),
                        last.size().word()));
    }

    private Message older(Printed last, Drill drill) {
        return Message.of(
                        CardLookup.class,
                        "older",
                        drill.title(),
                        drill.id(),
                        Message.day(last.date()),
                        last.size().word())
                .then(currentMark(mark(drill)));
    }

    /** Its current mark is known only where the language's words can be read. */
    private Message older(Printed last, Subject drill, Language language) {
        Message current = interpreter(language)
                .map(known -> currentMark(known.render(drill).drill().mark()))
                .orElse(Message.none());
        return Message.of(
                        CardLookup.class,
                        "older.in",
                        drill.drill().title(),
                        drill.drill().id(),
                        Terms.of(language),
                        Message.day(last.date()),
                        last.size().word())
                .then(current);
    }

    private static Message currentMark(PrintMark mark) {
        return Message.of(CardLookup.class, "current.mark", mark.shown());
    }

    private static Message when(List<Printed> printed) {
        List<Message> days = printed.stream()
                .map(line -> Message.of(
                        CardLookup.class,
                        "day",
                        Message.day(line.date()),
                        line.size().word()))
                .toList();
        return days.isEmpty() ? Message.none() : Message.of(CardLookup.class, "printed.on", Message.listed(days));
    }

    private CannotRun unknown(PrintMark mark) {
        List<String> known = drills().stream().map(drill -> mark(drill).signs()).toList();
        Message hint = Nearest.to(mark.signs(), known)
                .flatMap(PrintMark::read)
                .map(near -> Message.of(CardLookup.class, "is.it", near.shown()))
                .orElse(Message.none());
        return new CannotRun(
                Message.of(CardLookup.class, "unknown", mark.shown()).then(hint));
    }

    private PrintMark mark(Drill drill) {
        return PrintMark.of(drill, folder.school());
    }

    private Stream<Subject> subjects() {
        return folder.entries().stream().flatMap(entry -> entry.subject().stream());
    }

    private List<Drill> drills() {
        return subjects().map(Subject::drill).toList();
    }
}
