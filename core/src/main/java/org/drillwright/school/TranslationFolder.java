package org.drillwright.school;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.model.Language;
import org.drillwright.model.Translations;
import org.drillwright.read.ReadTranslations;
import org.drillwright.read.Reading;
import org.drillwright.read.ReadingLimits;
import org.drillwright.read.ReadingRule;
import org.drillwright.read.TranslationsReader;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.translation.Interpreter;
import org.drillwright.translation.Rendering;
import org.drillwright.wording.Message;

/** A school's words in other languages: a file for each, named as the language is. */
public final class TranslationFolder {

    private final SchoolFolder school;

    public TranslationFolder(SchoolFolder school) {
        this.school = school;
    }

    /** Where the words of a language lie, be the file there or not. */
    public Path file(Language into) {
        return school.root().resolve(ClassFiles.TRANSLATIONS).resolve(into.word() + ".yaml");
    }

    /** A file's name as it is shown. */
    public String shown(Language into) {
        return ClassFiles.TRANSLATIONS + "/" + into.word() + ".yaml";
    }

    /**
     * What the school has translated into a language; nothing if there is no file.
     *
     * @throws IOException if the file is there and cannot be read
     */
    public Optional<Reading<ReadTranslations>> read(Language into) throws IOException {
        Path file = file(into);
        return Files.isRegularFile(file) ? Optional.of(read(file)) : Optional.empty();
    }

    private Reading<ReadTranslations> read(Path file) throws IOException {
        return TranslationsReader.read(
                DrillFiles.shownFrom(school.root(), file), school.unsaved().bytes(file, ReadingLimits.FILE_BYTES));
    }

    /**
     * What is wrong with all of them.
     *
     * @throws IOException if a file that is there cannot be read
     */
    public List<Finding> findings() throws IOException {
        List<Finding> findings = new ArrayList<>();
        for (Path file : ClassFiles.translations(school.root())) {
            Optional<Language> into = language(file);
            if (into.isEmpty()) {
                findings.add(strange(file));
                continue;
            }
            Reading<ReadTranslations> reading = read(file);
            findings.addAll(reading.findings());
            reading.value().ifPresent(read -> findings.addAll(unlike(read, into.get())));
        }
        return findings;
    }

    private static Optional<Language> language(Path file) {
        return Language.all().stream()
                .filter(language -> DrillFiles.name(file).equals(language.word() + ".yaml"))
                .findFirst();
    }

    private Finding strange(Path file) {
        String known = Language.all().stream()
                .map(language -> language.word() + ".yaml")
                .collect(Collectors.joining(", "));
        return new Finding(
                ReadingRule.UNKNOWN_WORD.id(),
                Severity.ERROR,
                new SourceFile(DrillFiles.shownFrom(school.root(), file), ""),
                Span.at(0),
                Message.of(TranslationFolder.class, "no.language"),
                Message.of(TranslationFolder.class, "no.language.way", known));
    }

    /** Turns whose translation is not what was checked. */
    private List<Finding> unlike(ReadTranslations read, Language into) {
        if (read.translations().entries().stream().noneMatch(Translations.Entry::isFilled)) {
            return List.of();
        }
        Interpreter interpreter = new Interpreter(school.school(), into, read.translations());
        Map<String, Message> unlike = new LinkedHashMap<>();
        school.entries().stream()
                .flatMap(entry -> entry.subject().stream())
                .map(interpreter::render)
                .map(Rendering::unlike)
                .forEach(unlike::putAll);
        List<Finding> findings = new ArrayList<>();
        List<Translations.Entry> entries = read.translations().entries();
        for (int at = 0; at < entries.size(); at++) {
            Message why = unlike.get(Translations.plain(entries.get(at).from()));
            if (why != null && entries.get(at).isFilled()) {
                findings.add(new Finding(
                        ReadingRule.TRANSLATION_UNLIKE.id(),
                        Severity.WARNING,
                        read.file(),
                        read.places().span(FieldPath.of("texts").item(at).key("to")),
                        Message.of(
                                TranslationFolder.class,
                                "translation.unlike",
                                why,
                                entries.get(at).from()),
                        Message.of(TranslationFolder.class, "translation.unlike.way")));
            }
        }
        return findings;
    }
}
