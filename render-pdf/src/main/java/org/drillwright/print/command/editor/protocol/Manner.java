package org.drillwright.print.command.editor.protocol;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.editing.Told;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.HoverCapabilities;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;

/** How an editor wants to be told things. */
record Manner(boolean markdown) {

    static Manner of(ClientCapabilities client) {
        boolean markdown = Optional.ofNullable(client.getTextDocument())
                .map(TextDocumentClientCapabilities::getHover)
                .map(HoverCapabilities::getContentFormat)
                .filter(formats -> formats.contains(MarkupKind.MARKDOWN))
                .isPresent();
        return new Manner(markdown);
    }

    MarkupContent content(List<Told> told) {
        return new MarkupContent(
                markdown ? MarkupKind.MARKDOWN : MarkupKind.PLAINTEXT,
                told.stream().map(this::text).collect(Collectors.joining("\n\n")));
    }

    private String text(Told told) {
        return markdown
                ? "**" + escaped(told.heading()) + "**\n\n"
                        + told.lines().stream()
                                .map(line -> "- " + escaped(line))
                                .collect(Collectors.joining("\n"))
                : told.heading() + "\n" + String.join("\n", told.lines());
    }

    /** Signs that Markdown would take for its own (CommonMark 2.4). */
    private static String escaped(String text) {
        return text.replaceAll("[\\\\`*_{}\\[\\]<>#|]", "\\\\$0");
    }
}
