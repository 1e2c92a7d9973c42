package org.drillwright.print.command.editor.protocol;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.eclipse.lsp4j.jsonrpc.CompletableFutures;

/** Does one thing after another, in the order in which the editor asked for them. */
final class WorkQueue implements AutoCloseable {

    private final ScheduledExecutorService thread;
    private Future<?> paused = CompletableFuture.completedFuture(null);

    WorkQueue() {
        this.thread = new ScheduledThreadPoolExecutor(1, work -> {
            Thread worker = new Thread(work, "drills");
            worker.setDaemon(true);
            return worker;
        });
    }

    /** An answer; none is looked for if the question has been taken back when its turn comes. */
    <T> CompletableFuture<T> ask(Supplier<T> answer) {
        return CompletableFutures.computeAsync(thread, taken -> {
            taken.checkCanceled();
            return answer.get();
        });
    }

    void add(Runnable work) {
        try {
            thread.execute(work);
        } catch (RejectedExecutionException over) {
            // A save was noticed while everything ended.
        }
    }

    /** Does something when nothing else was to be done after a pause for so many milliseconds. */
    void afterPause(long milliseconds, Runnable work) {
        paused.cancel(false);
        paused = thread.schedule(work, milliseconds, TimeUnit.MILLISECONDS);
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
