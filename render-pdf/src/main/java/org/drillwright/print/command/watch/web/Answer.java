package org.drillwright.print.command.watch.web;

import java.nio.charset.StandardCharsets;

/** What a request gets. */
public final class Answer {

    private static final String PLAIN = "text/plain; charset=utf-8";

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

    public static Answer html(String body) {
        return of("text/html; charset=utf-8", body);
    }

    public static Answer json(String body) {
        return of("application/json; charset=utf-8", body);
    }

    public static Answer svg(String body) {
        return of("image/svg+xml; charset=utf-8", body);
    }

    /** Why there is nothing to be had, in a sentence. */
    static Answer refused(int status, String why) {
        return new Answer(status, PLAIN, (why + "\n").getBytes(StandardCharsets.UTF_8));
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
