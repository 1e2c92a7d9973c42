package org.drillwright.print.command.editor.protocol;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import org.drillwright.print.command.editor.workspace.Workspace;
import org.drillwright.wording.Message;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.services.LanguageClient;

/** The talk with one editor, from its first word to its last, in the order that the protocol lays down. */
final class Conversation implements AutoCloseable {

    private enum Stage {
        NOT_BEGUN,
        OPEN,
        SHUT
    }

    private final WorkQueue queue = new WorkQueue();
    private final Supplier<LanguageClient> client;
    private final Workspace workspace;
    private final Publishing publishing;
    private final CompletableFuture<Boolean> ended = new CompletableFuture<>();
    private volatile Stage stage = Stage.NOT_BEGUN;
    private volatile Manner manner = Manner.of(Optional.empty(), Locale.ENGLISH);

    Conversation(Supplier<LanguageClient> client) {
        this.client = client;
        this.workspace = new Workspace(this::saved);
        this.publishing = new Publishing(workspace, client, () -> manner.language());
    }

    private void saved() {
        queue.add(() -> {
            workspace.noticeSave();
            publish();
        });
    }

    Workspace workspace() {
        return workspace;
    }

    Manner manner() {
        return manner;
    }

    void begin(Manner wanted) {
        if (stage != Stage.NOT_BEGUN) {
            throw refused(ResponseErrorCode.InvalidRequest, "The session has already begun.");
        }
        manner = wanted;
        stage = Stage.OPEN;
    }

    void shut() {
        demandOpen();
        stage = Stage.SHUT;
    }

    /** The editor's last word, or the end of the pipe to it. */
    void end() {
        ended.complete(stage == Stage.SHUT);
    }

    /** Waits for the end; whether the editor took its leave as the protocol asks. */
    boolean awaitEnd() {
        return ended.join();
    }

    /** Does what the editor tells; nothing before the talk has begun and when it is over. */
    void hear(Runnable work) {
        if (stage == Stage.OPEN) {
            queue.add(work);
        }
    }

    /** Answers a question; with nothing where there is nothing to answer. */
    <T> CompletableFuture<T> ask(Supplier<Optional<T>> answer) {
        demandOpen();
        return queue.ask(() -> answer.get().orElse(null));
    }

    private void demandOpen() {
        if (stage == Stage.NOT_BEGUN) {
            throw refused(ResponseErrorCode.ServerNotInitialized, "The session has not begun.");
        }
        if (stage == Stage.SHUT) {
            throw refused(ResponseErrorCode.InvalidRequest, "The session is over.");
        }
    }

    private static ResponseErrorException refused(ResponseErrorCode code, String why) {
        return new ResponseErrorException(new ResponseError(code, why, null));
    }

    /** Says one sentence in the editor's own place for it. */
    void tell(Message sentence) {
        client.get().showMessage(new MessageParams(MessageType.Info, sentence.in(manner.language())));
    }

    void publish() {
        publishing.publish();
    }

    void publishAfter(long milliseconds) {
        queue.afterPause(milliseconds, publishing::publish);
    }

    void clear(String uri) {
        publishing.clear(uri);
    }

    @Override
    public void close() {
        queue.close();
        workspace.close();
    }
}
