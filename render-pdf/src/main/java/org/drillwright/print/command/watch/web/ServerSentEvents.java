package org.drillwright.print.command.watch.web;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** News for every open page, as server-sent events (WHATWG HTML, 9.2). */
public final class ServerSentEvents {

    /** More than anybody has open. */
    public static final int READERS = 32;

    /** A page that is so far behind is let go; when it comes back it asks for everything anew. */
    private static final int BEHIND = 64;

    /** How often something is said, so that it is noticed when a page is gone. */
    private static final long SECONDS_OF_SILENCE = 15;

    private static final String END = "";

    private final Semaphore places = new Semaphore(READERS);
    private final Set<BlockingQueue<String>> readers = ConcurrentHashMap.newKeySet();

    /** Tells every open page; one line of text. */
    public void tell(String line) {
        readers.removeIf(reader -> !reader.offer("data: " + line + "\n\n"));
    }

    /** Takes a place for one more page, if there is one; whoever took it gives it back by {@link #leave}. */
    boolean enter() {
        return places.tryAcquire();
    }

    void leave() {
        places.release();
    }

    /** Serves one page that has a place until it goes, or until the end. */
    void serve(OutputStream out) throws IOException {
        BlockingQueue<String> reader = new ArrayBlockingQueue<>(BEHIND);
        readers.add(reader);
        try {
            write("retry: 1000\n\n", out);
            while (readers.contains(reader)) {
                String news = reader.poll(SECONDS_OF_SILENCE, TimeUnit.SECONDS);
                if (END.equals(news)) {
                    return;
                }
                write(news == null ? ": still here\n\n" : news, out);
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        } finally {
            readers.remove(reader);
        }
    }

    private static void write(String text, OutputStream out) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    /** Lets every page go. */
    void end() {
        for (BlockingQueue<String> reader : readers) {
            reader.clear();
            reader.offer(END);
        }
        readers.clear();
    }
}
