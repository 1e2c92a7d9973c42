package org.drillwright.print.command.printing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Language;
import org.drillwright.model.Translations;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.print.command.printing.chosen.DrillChooser;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.read.ReadTranslations;
import org.drillwright.read.TranslationsReader;
import org.drillwright.read.TranslationsText;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.TranslationFolder;
import org.drillwright.translation.Interpreter;
import org.drillwright.translation.Rendering;
import org.drillwright.wording.Message;

/**
 * What of a whole school has no translation into a language yet, for the language's file; what that has and no drill has any
 * more is marked there.
 */
final class MissingTexts {

    private final Invocation run;
    private final SchoolFolder folder;
    private final Language language;
    private final Optional<ReadTranslations> there;
    private final Interpreter interpreter;
    private final Map<String, Message> missing = new LinkedHashMap<>();
    private final Set<String> used = new LinkedHashSet<>();

    /** @param there what the file has, if it is there */
    MissingTexts(
            Invocation run,
            SchoolFolder folder,
            Language language,
            Optional<ReadTranslations> there,
            Interpreter interpreter) {
        this.run = run;
        this.folder = folder;
        this.language = language;
        this.there = there;
        this.interpreter = interpreter;
    }

    /** Adds them to the file, and says so. */
    void list() {
        gather();
        int left = leaveOut();
        String shown = new TranslationFolder(folder).shown(language);
        if (there.isEmpty() && missing.isEmpty()) {
            String name = language.locale().getDisplayLanguage(run.language());
            run.say(Message.of(MissingTexts.class, "missing.none", name));
            return;
        }
        String text = text(shown);
        if (there.filter(read -> read.file().text().equals(text)).isPresent()) {
            run.say(Message.of(MissingTexts.class, "missing.none.in", shown));
            return;
        }
        write(text, shown);
        Message added = CountedNoun.of(missing.size(), "text");
        run.say(
                left == 0
                        ? Message.of(MissingTexts.class, "missing.added", shown, added)
                        : Message.of(MissingTexts.class, "missing.added.not.all", shown, added, left));
    }

    private void gather() {
        new DrillChooser(folder).names().forEach(name -> {
            used.add(Translations.plain(name));
            if (interpreter.isUnknown(name)) {
                missing.putIfAbsent(Translations.plain(name), Message.of(MissingTexts.class, "missing.set.name"));
            }
        });
        folder.entries().stream().flatMap(entry -> entry.subject().stream()).forEach(drill -> {
            Rendering one = interpreter.render(drill);
            one.wanted().forEach(missing::putIfAbsent);
            used.addAll(one.used());
        });
        there.ifPresent(read -> read.translations().entries().stream()
                .map(entry -> Translations.plain(entry.from()))
                .forEach(missing::remove));
    }

    /** How many the file has no room for. */
    private int leaveOut() {
        int room = TranslationsReader.MOST
                - there.map(read -> read.translations().entries().size()).orElse(0);
        List<String> all = new ArrayList<>(missing.keySet());
        List<String> beyond = all.subList(Math.min(room, all.size()), all.size());
        beyond.forEach(missing::remove);
        return beyond.size();
    }

    private String text(String shown) {
        return there.map(read -> TranslationsText.with(read, missing, used, run.language())
                        .orElseThrow(() -> new CannotRun(Message.of(MissingTexts.class, "missing.laid.out", shown))))
                .orElseGet(() -> TranslationsText.of(missing, run.language()));
    }

    private void write(String text, String shown) {
        Path file = new TranslationFolder(folder).file(language);
        try {
            Files.createDirectories(Locations.folderOf(file));
        } catch (IOException problem) {
            throw new CannotRun(Message.of(MissingTexts.class, "missing.folder", shown), problem);
        }
        there.ifPresentOrElse(
                read -> new WholeFile(file).rewrite(read.file().text(), text), () -> new WholeFile(file).create(text));
    }
}
