package org.drillwright.print.command.editor.protocol;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.autofix.Autofix;
import org.drillwright.autofix.Edit;
import org.drillwright.autofix.Fix;
import org.drillwright.autofix.Fixes;
import org.drillwright.check.Subject;
import org.drillwright.editing.Completion;
import org.drillwright.editing.DrillRename;
import org.drillwright.editing.Hover;
import org.drillwright.editing.HoverText;
import org.drillwright.editing.Offer;
import org.drillwright.editing.PersonRename;
import org.drillwright.editing.Symbol;
import org.drillwright.formatter.Formatter;
import org.drillwright.print.command.editor.workspace.Document;
import org.drillwright.print.command.editor.workspace.OpenSchool;
import org.drillwright.read.DrillReader;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.FileKind;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Span;

/** A text in its school, as somebody asks of it. */
record OpenText(OpenSchool school, Document document) {

    Positions positions() {
        return new Positions(document.text());
    }

    Optional<FileKind> kind() {
        return school.kind(document);
    }

    /** The drill that the text is; none while it cannot be read. */
    Optional<Subject> subject() {
        return school.entry(document).flatMap(Entry::subject);
    }

    /** What was found at a place, and then how it was read or what its key is for. */
    List<HoverText> hover(int offset) {
        List<HoverText> told = new ArrayList<>(Hover.rules(school.findings(document), offset));
        subject()
                .flatMap(subject -> Hover.reading(subject, offset))
                .or(() -> kind().flatMap(kind -> Hover.name(school.folder(), kind, document.text(), offset)))
                .or(() -> school.form(document).flatMap(form -> Hover.key(document.text(), form, offset)))
                .ifPresent(told::add);
        return told;
    }

    List<Offer> offers(int offset) {
        return kind().map(kind -> Completion.at(
                        school.folder(), kind, document.file(), document.text(), school.form(document), offset))
                .orElse(List.of());
    }

    /** Ways to mend what was found, those that touch a stretch of the text. */
    List<Fix> fixes(Span within) {
        Map<Edit, Fix> fixes = new LinkedHashMap<>();
        Stream.concat(
                        subject().map(Fixes::of).orElse(List.of()).stream(),
                        school.findings(document).stream().flatMap(finding -> Fixes.meant(finding).stream()))
                .filter(fix -> fix.mended().stream().anyMatch(finding -> touch(finding.span(), within)))
                .forEach(fix -> fixes.putIfAbsent(fix.edit(), fix));
        return List.copyOf(fixes.values());
    }

    private static boolean touch(Span one, Span other) {
        return one.start() <= other.end() && other.start() <= one.end();
    }

    /** The text with all mended that has one right answer; none if that is nothing. */
    Optional<String> mended() {
        return subject()
                .map(Autofix::of)
                .filter(text -> !text.equals(document.text().text()));
    }

    List<Symbol> outline() {
        return subject().map(Symbol::outline).orElse(List.of());
    }

    /** The text in the one layout; empty for a file that is no drill. */
    Optional<Formatter.Outcome> tidied() {
        return kind().filter(kind -> kind == FileKind.DRILL)
                .map(drill -> new Formatter(new DrillReader(school.folder().school()))
                        .of(
                                DrillFiles.id(document.file()),
                                document.text().name(),
                                document.text().text().getBytes(StandardCharsets.UTF_8)));
    }

    /** The drill that is named at a place. */
    Optional<DrillRename.Named> named(int offset) {
        return kind().flatMap(kind -> DrillRename.named(kind, document.text(), offset));
    }

    /** The drill that is named at a place, or else the one that the text is, if its title stands there. */
    Optional<DrillRename.Named> renamed(int offset) {
        return named(offset)
                .or(() -> subject()
                        .flatMap(subject -> subject.places().field(FieldPath.of("title")))
                        .map(title -> title.key().to(title.value()))
                        .filter(title -> title.start() <= offset && offset <= title.end())
                        .map(title -> new DrillRename.Named(DrillFiles.id(document.file()), title)));
    }

    /** The file of a drill of this school. */
    Optional<Path> file(String id) {
        SchoolFolder folder = school.folder();
        return folder.entry(id).map(Entry::file);
    }

    List<DrillRename.Mention> mentions(String id) {
        try {
            return DrillRename.mentions(school.folder(), id);
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    /** Who is named at a place. */
    Optional<DrillRename.Named> person(int offset) {
        return kind().flatMap(kind -> PersonRename.named(kind, document.text(), offset));
    }

    /** Everywhere that somebody is named. */
    List<DrillRename.Mention> mentionsOf(DrillRename.Named person) {
        try {
            return PersonRename.mentions(school.folder(), person.id());
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    /** Where somebody stands in the roster. */
    Optional<DrillRename.Mention> place(DrillRename.Named person) {
        try {
            return PersonRename.place(school.folder(), person.id());
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }
}
