package org.drillwright.print.command.watch.web;

import com.sun.net.httpserver.Headers;

/** The headers of every answer: nothing from elsewhere, no script in the page itself, nothing kept, nothing told. */
final class SecurityHeaders {

    /** Even our own script may not turn text into markup: there is no policy of trusted types that would let it. */
    private static final String CONTENT = String.join(
            "; ",
            "default-src 'none'",
            "script-src 'self'",
            "style-src 'self'",
            "font-src 'self'",
            "connect-src 'self'",
            "base-uri 'none'",
            "form-action 'none'",
            "frame-ancestors 'none'",
            "require-trusted-types-for 'script'",
            "trusted-types 'none'");

    private SecurityHeaders() {}

    static void put(Headers headers, String type) {
        headers.set("Content-Type", type);
        headers.set("Content-Security-Policy", CONTENT);
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cache-Control", "no-store");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("X-Frame-Options", "DENY");
    }
}
