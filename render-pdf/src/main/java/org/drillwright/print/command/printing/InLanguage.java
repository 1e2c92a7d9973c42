package org.drillwright.print.command.printing;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.model.Translations;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.printing.chosen.ChosenDrill;
import org.drillwright.print.command.printing.chosen.ChosenDrills;
import org.drillwright.read.ReadTranslations;
import org.drillwright.read.Reading;
import org.drillwright.report.DisplayWidth;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.TranslationFolder;
import org.drillwright.source.FieldPath;
import org.drillwright.translation.Interpreter;
import org.drillwright.translation.Rendering;
import org.drillwright.wording.Message;

/** What is printed, in the language that was asked for; where none was, as it was written. */
public final class InLanguage {

    private final Invocation run;
    private final SchoolFolder folder;
    private final Optional<Language> into;
    private final Optional<Reading<ReadTranslations>> own;
    private final Optional<Interpreter> interpreter;
    private final Map<String, Rendering> printed = new LinkedHashMap<>();

    private InLanguage(
            Invocation run, SchoolFolder folder, Optional<Language> into, Optional<Reading<ReadTranslations>> own) {
        this.run = run;
        this.folder = folder;
        this.into = into;
        this.own = own;
        Translations words =
                own.flatMap(Reading::value).map(ReadTranslations::translations).orElse(Translations.NONE);
        this.interpreter = into.map(language -> new Interpreter(folder.school(), language, words));
    }

    /** Refuses a file of translations that has an error, which is shown. */
    public static InLanguage of(Invocation run, SchoolFolder folder, Optional<Language> into) {
        try {
            Optional<Reading<ReadTranslations>> own = Optional.empty();
            if (into.isPresent()) {
                own = new TranslationFolder(folder).read(into.get());
            }
            Optional<Reading<ReadTranslations>> broken =
                    own.filter(reading -> reading.value().isEmpty());
            if (broken.isPresent()) {
                run.show(broken.get().findings());
                throw new CannotRun(Message.of(
                        InLanguage.class,
                        "in-language.nothing.was.printed.mend",
                        new TranslationFolder(folder).shown(into.get())));
            }
            return new InLanguage(run, folder, into, own);
        } catch (IOException problem) {
            throw new CannotRun(
                    Message.of(InLanguage.class, "in-language.the.translations.of.cannot", folder.root()), problem);
        }
    }

    /** The settings that labels are taken by. */
    public School school() {
        return interpreter.map(Interpreter::there).orElseGet(folder::school);
    }

    /** The name of a set, as it is printed. */
    public String word(String set) {
        return interpreter.map(known -> known.word(set)).orElse(set);
    }

    /** What was picked, in the language. */
    public ChosenDrills picks(ChosenDrills picks) {
        return interpreter
                .map(known -> new ChosenDrills(
                        picks.title(),
                        picks.drills().stream().map(pick -> pick(pick, known)).toList(),
                        picks.absent()))
                .orElse(picks);
    }

    private ChosenDrill pick(ChosenDrill pick, Interpreter known) {
        Optional<Rendering> rendering = pick.entry().subject().map(known::render);
        rendering.ifPresent(one -> printed.put(pick.id(), one));
        return rendering.map(one -> pick.said(one, this::word)).orElse(pick);
    }

    /** The same of only some of what was picked. */
    public void tell(ChosenDrills some) {
        printed.keySet().retainAll(some.drills().stream().map(ChosenDrill::id).toList());
        tell();
    }

    /** Says what stays as it was written, and what has no translation; nothing if no language was asked for. */
    public void tell() {
        if (into.isEmpty() || printed.isEmpty()) {
            return;
        }
        int turns = printed.values().stream().mapToInt(Rendering::turns).sum();
        List<Message> staying = printed.entrySet().stream()
                .filter(one -> !one.getValue().staying().isEmpty())
                .map(one -> Message.of(InLanguage.class, "in-language.places", one.getKey(), places(one.getValue())))
                .toList();
        int stay =
                printed.values().stream().mapToInt(one -> one.staying().size()).sum();
        if (stay > 0) {
            note(Message.counted(
                    InLanguage.class,
                    "in-language.stay",
                    stay,
                    CountedNoun.of(turns, "turn"),
                    written(),
                    Message.clauses(staying)));
        }
        int shorter =
                printed.values().stream().mapToInt(one -> one.beside().size()).sum();
        if (shorter > 0) {
            note(Message.counted(InLanguage.class, "in-language.shorter", shorter));
        }
        Set<String> wanted = printed.values().stream()
                .flatMap(one -> one.wanted().keySet().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (!wanted.isEmpty()) {
            note(Message.counted(
                    InLanguage.class,
                    "in-language.no.words",
                    wanted.size(),
                    name(into.get()),
                    new TranslationFolder(folder).shown(into.get())));
        }
    }

    private void note(Message sentence) {
        run.out().println(DisplayWidth.shown(run.said(Message.of(InLanguage.class, "note", sentence))));
    }

    private Message written() {
        return printed.values().stream()
                .filter(one -> !one.staying().isEmpty())
                .map(Rendering::from)
                .distinct()
                .map(this::name)
                .collect(Collectors.collectingAndThen(Collectors.toList(), Message::all));
    }

    private Message name(Language language) {
        return Message.plain(language.locale().getDisplayLanguage(run.language()));
    }

    /** {@code start; count 2, leader}. */
    private static Message places(Rendering one) {
        return Message.listed(
                one.staying().stream().map(place -> place(one, place)).toList());
    }

    private static Message place(Rendering one, FieldPath place) {
        String[] parts = place.text().split("/");
        return parts.length < 3
                ? Message.plain(place.text())
                : Message.of(
                        InLanguage.class,
                        "in-language.place." + parts[2],
                        one.original().count(Integer.parseInt(parts[1])));
    }

    /**
     * Adds to the language's file what has no translation yet.
     *
     * @throws java.util.NoSuchElementException if no language was asked for
     */
    public void listMissing() {
        new MissingTexts(run, folder, into.orElseThrow(), own.flatMap(Reading::value), interpreter.orElseThrow())
                .list();
    }
}
