package org.drillwright.print.command.editor.protocol;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.editing.HoverText;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.HoverCapabilities;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.ResourceOperationKind;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceEditCapabilities;

/**
 * What an editor can do with what it is told.
 *
 * @param markdown whether it shows Markdown
 * @param renames whether it renames files when it is told to
 * @param language in which it is told
 */
record Manner(boolean markdown, boolean renames, Locale language) {

    /** @param told at the beginning; an editor that tells nothing is taken to do nothing of it */
    static Manner of(Optional<ClientCapabilities> told, Locale language) {
        ClientCapabilities client = told.orElseGet(ClientCapabilities::new);
        Optional<List<String>> formats = Optional.ofNullable(client.getTextDocument())
                .map(TextDocumentClientCapabilities::getHover)
                .map(HoverCapabilities::getContentFormat);
        Optional<List<String>> operations = Optional.ofNullable(client.getWorkspace())
                .map(WorkspaceClientCapabilities::getWorkspaceEdit)
                .map(WorkspaceEditCapabilities::getResourceOperations);
        return new Manner(
                formats.filter(known -> known.contains(MarkupKind.MARKDOWN)).isPresent(),
                operations
                        .filter(known -> known.contains(ResourceOperationKind.Rename))
                        .isPresent(),
                language);
    }

    MarkupContent content(List<HoverText> told) {
        return new MarkupContent(
                markdown ? MarkupKind.MARKDOWN : MarkupKind.PLAINTEXT,
                told.stream().map(this::text).collect(Collectors.joining("\n\n")));
    }

    private String text(HoverText told) {
        String heading = told.heading().in(language);
        List<String> lines =
                told.lines().stream().map(line -> line.in(language)).toList();
        return markdown
                ? "**" + escaped(heading) + "**\n\n"
                        + lines.stream().map(line -> "- " + escaped(line)).collect(Collectors.joining("\n"))
                : heading + "\n" + String.join("\n", lines);
    }

    /** Signs that Markdown would take for its own (CommonMark 2.4). */
    private static String escaped(String text) {
        return text.replaceAll("[\\\\`*_{}\\[\\]<>#|]", "\\\\$0");
    }
}
