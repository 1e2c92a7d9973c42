package org.drillwright.print.command.editor.protocol;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.drillwright.autofix.Edit;
import org.drillwright.editing.DrillRename;
import org.drillwright.editing.PersonRename;
import org.drillwright.print.command.editor.workspace.Workspace;
import org.drillwright.school.ClassFiles;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolTexts;
import org.drillwright.source.SourceFile;
import org.drillwright.wording.Message;
import org.eclipse.lsp4j.RenameFile;
import org.eclipse.lsp4j.ResourceOperation;
import org.eclipse.lsp4j.SnippetTextEdit;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/** Gives a drill another name: its file, and wherever the files of its school name it. */
final class Renaming {

    private static final Message UNREADABLE = Message.of(Renaming.class, "unreadable");

    private final Workspace workspace;
    private final Manner manner;

    Renaming(Workspace workspace, Manner manner) {
        this.workspace = workspace;
        this.manner = manner;
    }

    /** What the editor is to do; refused with one sentence where the name cannot be had. */
    WorkspaceEdit edit(OpenText page, String old, String now) {
        SchoolFolder school = page.school().folder();
        Optional<Path> file = page.file(old);
        Optional<Message> refusal = old.equals(now)
                ? Optional.empty()
                : DrillRename.refusal(school, now)
                        .or(() -> file.isEmpty()
                                ? Optional.of(Message.of(Renaming.class, "no-drill", old))
                                : Optional.empty());
        refusal.ifPresent(why -> {
            throw refused(why);
        });
        Map<String, List<TextEdit>> edits = edits(school, old, now);
        if (!manner.renames()) {
            return new WorkspaceEdit(edits);
        }
        List<Either<TextDocumentEdit, ResourceOperation>> changes = changes(edits);
        file.ifPresent(from -> changes.add(Either.forRight(new RenameFile(uri(from), uri(renamed(from, now))))));
        return new WorkspaceEdit(changes);
    }

    private List<Either<TextDocumentEdit, ResourceOperation>> changes(Map<String, List<TextEdit>> edits) {
        List<Either<TextDocumentEdit, ResourceOperation>> changes = new ArrayList<>();
        edits.forEach((uri, all) -> changes.add(Either.forLeft(new TextDocumentEdit(
                identifier(uri),
                all.stream().map(Either::<TextEdit, SnippetTextEdit>forLeft).toList()))));
        return changes;
    }

    private ResponseErrorException refused(Message why) {
        return new ResponseErrorException(
                new ResponseError(ResponseErrorCode.RequestFailed, why.in(manner.language()), null));
    }

    /** The edits alone, for an editor that renames the file by itself. */
    Map<String, List<TextEdit>> edits(SchoolFolder school, String old, String now) {
        try {
            return edits(school, DrillRename.edits(school, old, now));
        } catch (IOException unreadable) {
            throw refused(UNREADABLE);
        }
    }

    private Map<String, List<TextEdit>> edits(SchoolFolder school, Map<Path, List<Edit>> edits) throws IOException {
        Map<Path, SourceFile> texts = new LinkedHashMap<>();
        SchoolTexts.of(school).forEach(text -> texts.put(text.file(), text.text()));
        Map<String, List<TextEdit>> written = new LinkedHashMap<>();
        edits.forEach((file, own) -> {
            ProtocolJson answers = new ProtocolJson(
                    new Positions(texts.getOrDefault(file, new SourceFile("", ""))), manner.language());
            written.put(
                    uri(file),
                    own.stream().map((Edit edit) -> answers.edit(edit)).toList());
        });
        return written;
    }

    /** What gives somebody another name: in the roster, which keeps the old one beside it, in classes and terms. */
    WorkspaceEdit person(SchoolFolder school, String old, String now) {
        try {
            Optional<Message> refusal = PersonRename.refusal(school, old, now);
            if (refusal.isPresent()) {
                throw refused(refusal.get());
            }
            PersonRename.Renamed renamed = PersonRename.of(school, old, now)
                    .orElseThrow(() -> refused(Message.of(Renaming.class, "roster.unwritten")));
            Map<String, List<TextEdit>> edits = new LinkedHashMap<>();
            edits.put(
                    uri(renamed.roster().file()),
                    new ProtocolJson(new Positions(renamed.roster().text()), manner.language())
                            .rewritten(renamed.text()));
            edits.putAll(edits(school, renamed.edits()));
            return manner.renames() ? new WorkspaceEdit(changes(edits)) : new WorkspaceEdit(edits);
        } catch (IOException unreadable) {
            throw refused(UNREADABLE);
        }
    }

    /** What still has somebody's old name afterwards. */
    List<Message> leftOf(OpenText page, String old) {
        return names(page.school().root().resolve(ClassFiles.RECORD), old)
                ? List.of(Message.of(Renaming.class, "left.person", ClassFiles.RECORD, old))
                : List.of();
    }

    private VersionedTextDocumentIdentifier identifier(String uri) {
        Integer version =
                workspace.opened(uri).map(opened -> opened.document().version()).orElse(null);
        return new VersionedTextDocumentIdentifier(uri, version);
    }

    /** As the editor names a file, if it is open there. */
    private String uri(Path file) {
        return workspace.all().stream()
                .filter(opened -> opened.document().file().equals(file))
                .map(opened -> opened.document().uri())
                .findFirst()
                .orElseGet(() -> file.toUri().toString());
    }

    private static Path renamed(Path file, String now) {
        String name = String.valueOf(file.getFileName());
        return file.resolveSibling(now + name.substring(name.lastIndexOf('.')));
    }

    /** What still has the old name afterwards, a sentence for each. */
    List<Message> left(OpenText page, String old, String now) {
        List<Message> left = new ArrayList<>();
        if (!manner.renames()) {
            page.file(old)
                    .map(file -> String.valueOf(renamed(file, now).getFileName()))
                    .ifPresent(name -> left.add(Message.of(Renaming.class, "left.file", name)));
        }
        for (String file : List.of(ClassFiles.RECORD, ClassFiles.ROSTER_TABLE)) {
            if (names(page.school().root().resolve(file), old)) {
                left.add(Message.of(Renaming.class, "left.drill", file, old));
            }
        }
        return left;
    }

    private static boolean names(Path file, String id) {
        Pattern alone = Pattern.compile("(?<![\\w-])" + Pattern.quote(id) + "(?![\\w-])");
        try {
            return Files.isRegularFile(file)
                    && alone.matcher(Files.readString(file)).find();
        } catch (IOException unreadable) {
            return false;
        }
    }
}
