package org.drillwright.print.command.watch;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** A folder being watched, and somebody who looks at its page. */
final class Visit implements AutoCloseable {

    private final WatchSession watching;
    private final HttpClient client =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();
    private final BlockingQueue<String> news = new LinkedBlockingQueue<>();

    Visit(Path root) {
        this(root, Locale.ENGLISH);
    }

    Visit(Path root, Locale language) {
        this.watching = WatchSession.start(root, 0, language);
    }

    String address() {
        return watching.address();
    }

    int port() {
        return URI.create(address()).getPort();
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        URI there = URI.create(address()).resolve(path);
        return client.send(HttpRequest.newBuilder(there).build(), BodyHandlers.ofString());
    }

    /** What is said of a drill, as JSON. */
    String drill(String name) throws IOException, InterruptedException {
        return get("/drill?name=" + encoded(name)).body();
    }

    String card(String name) throws IOException, InterruptedException {
        return get("/card?at=0&name=" + encoded(name)).body();
    }

    static String encoded(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8);
    }

    /** Begins to listen to the news; returns when the server listens back. */
    Visit listening() throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(address() + "news")).build();
        var lines = client.send(request, BodyHandlers.ofLines()).body();
        Thread reader = new Thread(() -> lines.filter(line -> line.startsWith("data: "))
                .forEach(line -> news.add(line.substring("data: ".length()))));
        reader.setDaemon(true);
        reader.start();
        return this;
    }

    /** The next news. */
    String news() throws InterruptedException {
        String told = news.poll(20, TimeUnit.SECONDS);
        if (told == null) {
            throw new AssertionError("no news came");
        }
        return told;
    }

    /** Whether nothing is told for so long. */
    boolean isSilent(long milliseconds) throws InterruptedException {
        return news.poll(milliseconds, TimeUnit.MILLISECONDS) == null;
    }

    @Override
    public void close() {
        watching.close();
    }
}
