package org.drillwright.print.command.editor.protocol;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.drillwright.print.command.editor.workspace.Document;
import org.drillwright.print.command.editor.workspace.Workspace;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.services.LanguageClient;

/** Shows in the editor what is found in the texts that are open. */
final class Publishing {

    static final String SOURCE = "drillwright";

    private final Workspace workspace;
    private final Supplier<LanguageClient> client;
    private final Supplier<Locale> language;
    private final Map<String, List<Diagnostic>> shown = new HashMap<>();

    Publishing(Workspace workspace, Supplier<LanguageClient> client, Supplier<Locale> language) {
        this.language = language;
        this.workspace = workspace;
        this.client = client;
    }

    /** Shows anew what has changed since it was shown. */
    void publish() {
        for (Workspace.Opened opened : workspace.all()) {
            Document document = opened.document();
            List<Diagnostic> now = diagnostics(opened);
            if (!now.equals(shown.put(document.uri(), now))) {
                client.get().publishDiagnostics(new PublishDiagnosticsParams(document.uri(), now, document.version()));
            }
        }
    }

    /** Takes away what was shown in a text that is closed. */
    void clear(String uri) {
        if (Optional.ofNullable(shown.remove(uri)).filter(old -> !old.isEmpty()).isPresent()) {
            client.get().publishDiagnostics(new PublishDiagnosticsParams(uri, List.of()));
        }
    }

    private List<Diagnostic> diagnostics(Workspace.Opened opened) {
        Positions positions = new Positions(opened.document().text());
        return opened.school().findings(opened.document()).stream()
                .map(finding -> diagnostic(finding, positions, language.get()))
                .toList();
    }

    static Diagnostic diagnostic(Finding finding, Positions positions, Locale language) {
        String message = (finding.what().in(language) + "\n" + finding.wayOut().in(language)).strip();
        return new Diagnostic(
                positions.range(finding.span()), message, severity(finding.severity()), SOURCE, finding.rule());
    }

    private static DiagnosticSeverity severity(Severity severity) {
        return switch (severity) {
            case ERROR -> DiagnosticSeverity.Error;
            case WARNING -> DiagnosticSeverity.Warning;
            case NOTE -> DiagnosticSeverity.Information;
        };
    }
}
