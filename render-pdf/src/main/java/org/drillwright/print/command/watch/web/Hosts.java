package org.drillwright.print.command.watch.web;

import com.sun.net.httpserver.Headers;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The names by which this computer may call the server. A page from elsewhere can have its own name point here (DNS
 * rebinding), but a browser then sends that name.
 */
final class Hosts {

    private final Set<String> names;

    Hosts(int port) {
        this.names = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
    }

    boolean admit(Headers headers, URI address) {
        List<String> sent = headers.getOrDefault("Host", List.of());
        boolean elsewhere = address.isAbsolute() || address.getRawAuthority() != null;
        return !elsewhere && sent.size() == 1 && names.contains(sent.get(0).toLowerCase(Locale.ROOT));
    }
}
