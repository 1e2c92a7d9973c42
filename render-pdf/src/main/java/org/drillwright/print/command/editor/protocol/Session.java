package org.drillwright.print.command.editor.protocol;

import java.io.BufferedOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.services.LanguageClient;

/** One talk with an editor over a pair of streams. */
public final class Session {

    /** LSP4J writes what it cannot read, an author's own words among it, into a log: there is none. */
    private static final Logger LOG = Logger.getLogger("org.eclipse.lsp4j");

    private Session() {}

    /** Talks until the end; whether the editor took its leave as the protocol asks. */
    public static boolean hold(InputStream in, OutputStream out) {
        LOG.setLevel(Level.OFF);
        ExecutorService threads = Executors.newCachedThreadPool(work -> {
            Thread thread = new Thread(work, "editor");
            thread.setDaemon(true);
            return thread;
        });
        CompletableFuture<LanguageClient> client = new CompletableFuture<>();
        try (Conversation conversation = new Conversation(client::join)) {
            Launcher<LanguageClient> launcher = new Launcher.Builder<LanguageClient>()
                    .setLocalService(new DrillServer(conversation))
                    .setRemoteInterface(LanguageClient.class)
                    .setInput(in)
                    .setOutput(new BufferedOutputStream(out))
                    .setExecutorService(threads)
                    .setExceptionHandler(Session::error)
                    .create();
            client.complete(launcher.getRemoteProxy());
            Future<Void> listening = launcher.startListening();
            threads.execute(() -> {
                waitFor(listening);
                conversation.end();
            });
            return conversation.awaitEnd();
        } finally {
            threads.shutdownNow();
        }
    }

    private static void waitFor(Future<Void> listening) {
        try {
            listening.get();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException broken) {
            // The pipe is as good as closed.
        }
    }

    /** A fault of ours is named, and nothing of what it was about. */
    private static ResponseError error(Throwable problem) {
        Throwable cause =
                problem instanceof CompletionException && problem.getCause() != null ? problem.getCause() : problem;
        return cause instanceof ResponseErrorException refused
                ? refused.getResponseError()
                : new ResponseError(
                        ResponseErrorCode.InternalError,
                        "A fault in Drillwright itself (" + cause.getClass().getSimpleName() + ").",
                        null);
    }
}
