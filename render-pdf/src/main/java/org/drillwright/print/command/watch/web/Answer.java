package org.drillwright.print.command.watch.web;

import java.nio.charset.StandardCharsets;

/** What a request gets. */
public final class Answer {

    private static final String PLAIN = "text/plain; charset=utf-8";

    static final Answer FORBIDDEN = plain(403, "This page answers only this computer, by its own name.\n");
    static final Answer NOT_THERE = plain(404, "There is nothing here.\n");
    static final Answer ONLY_GET = plain(405, "Only GET is answered.\n");
    static final Answer BROKEN = plain(500, "A fault in Drillwright itself.\n");

    private final int status;
    private final String type;
    private final byte[] body;

    /** @param type of the body, with its character set */
    private Answer(int status, String type, byte[] body) {
        this.status = status;
        this.type = type;
        this.body = body;
    }

    public static Answer of(String type, String body) {
        return of(type, body.getBytes(StandardCharsets.UTF_8));
    }

    public static Answer of(String type, byte[] body) {
        return new Answer(200, type, body);
    }

    public static Answer plain(String body) {
        return of(PLAIN, body);
    }

    public static Answer json(String body) {
        return of("application/json; charset=utf-8", body);
    }

    public static Answer svg(String body) {
        return of("image/svg+xml; charset=utf-8", body);
    }

    private static Answer plain(int status, String body) {
        return new Answer(status, PLAIN, body.getBytes(StandardCharsets.UTF_8));
    }

    int status() {
        return status;
    }

    String type() {
        return type;
    }

    byte[] body() {
        return body;
    }
}
