package org.drillwright.print.command.watch.web;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.drillwright.wording.Message;

/** Serves a site to this computer: bound to 127.0.0.1, answering only those who call it by one of its own names. */
public final class LoopbackServer implements AutoCloseable {

    private static final byte[] LOOPBACK = {127, 0, 0, 1};
    private static final String NEWS = "/news";
    private static final int ONLY_GET = 405;
    private static final String STREAM = "text/event-stream; charset=utf-8";

    /** How long pages have to take their leave, in seconds. */
    private static final int PARTING = 1;

    private final HttpServer server;
    private final ExecutorService workers = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "page");
        thread.setDaemon(true);
        return thread;
    });
    private final Hosts hosts;
    private final Site site;
    private final ServerSentEvents news;
    private final Locale language;

    private LoopbackServer(HttpServer server, Site site, ServerSentEvents news, Locale language) {
        this.language = language;
        this.server = server;
        this.hosts = new Hosts(server.getAddress().getPort());
        this.site = site;
        this.news = news;
    }

    /**
     * Begins to serve.
     *
     * @param port 0 for any that is free
     * @param language in which it refuses
     */
    public static LoopbackServer open(int port, Site site, ServerSentEvents news, Locale language) throws IOException {
        InetAddress here = InetAddress.getByAddress("127.0.0.1", LOOPBACK);
        HttpServer server = HttpServer.create(new InetSocketAddress(here, port), 0);
        LoopbackServer opened = new LoopbackServer(server, site, news, language);
        server.createContext("/", opened::handle);
        server.setExecutor(opened.workers);
        server.start();
        return opened;
    }

    public InetSocketAddress address() {
        return server.getAddress();
    }

    @Override
    public void close() {
        news.end();
        workers.shutdown();
        try {
            workers.awaitTermination(PARTING, TimeUnit.SECONDS);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
        server.stop(0);
    }

    private void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            boolean admitted = hosts.admit(exchange.getRequestHeaders(), exchange.getRequestURI());
            boolean get = exchange.getRequestMethod().equals("GET");
            if (admitted && get && exchange.getRequestURI().getPath().equals(NEWS) && news.enter()) {
                tellNews(exchange);
                return;
            }
            send(
                    admitted ? get ? answer(exchange) : refused(ONLY_GET, "only.get") : refused(403, "forbidden"),
                    exchange);
        }
    }

    private void tellNews(HttpExchange exchange) throws IOException {
        try {
            SecurityHeaders.put(exchange.getResponseHeaders(), STREAM);
            exchange.sendResponseHeaders(200, 0);
            news.serve(exchange.getResponseBody());
        } finally {
            news.leave();
        }
    }

    private Answer answer(HttpExchange exchange) {
        String query =
                Optional.ofNullable(exchange.getRequestURI().getRawQuery()).orElse("");
        try {
            return site.answer(exchange.getRequestURI().getPath(), new Query(query))
                    .orElseGet(() -> refused(404, "not.there"));
        } catch (RuntimeException fault) {
            return refused(500, "fault");
        }
    }

    private Answer refused(int status, String why) {
        return Answer.refused(status, Message.of(LoopbackServer.class, why).in(language));
    }

    private static void send(Answer answer, HttpExchange exchange) throws IOException {
        SecurityHeaders.put(exchange.getResponseHeaders(), answer.type());
        if (answer.status() == ONLY_GET) {
            exchange.getResponseHeaders().set("Allow", "GET");
        }
        boolean bodiless = exchange.getRequestMethod().equals("HEAD");
        exchange.sendResponseHeaders(answer.status(), bodiless ? -1 : answer.body().length);
        if (!bodiless) {
            exchange.getResponseBody().write(answer.body());
        }
    }
}
