package org.drillwright.print.command.editor.protocol;

import java.io.InputStream;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.services.LanguageClient;

/** One talk with an editor over a pair of streams. */
public final class Session {

    /** LSP4J writes what it cannot read, an author's own words among it, into a log: there is none. */
    private static final Logger LOG = Logger.getLogger("org.eclipse.lsp4j");

    private Session() {}

    /**
     * Talks until the end; whether the editor took its leave as the protocol asks.
     *
     * @param language what is spoken, by what the editor itself speaks, if it says so
     */
    public static boolean hold(InputStream in, OutputStream out, Function<Optional<Locale>, Locale> language) {
        LOG.setLevel(Level.OFF);
        CompletableFuture<LanguageClient> client = new CompletableFuture<>();
        try (Conversation conversation = new Conversation(client::join)) {
            Wire wire = new Wire(in, out, new DrillServer(conversation, language));
            client.complete(wire.client());
            Thread listening = new Thread(
                    () -> {
                        wire.listen();
                        conversation.end();
                    },
                    "editor");
            listening.setDaemon(true);
            listening.start();
            return conversation.awaitEnd();
        }
    }
}
