package org.drillwright.print.command.watch.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import org.drillwright.print.command.watch.web.Answer;

/** The files that the page is made of, by the addresses under which they are had; there are no others. */
final class Resources {

    private static final String SCRIPT = "text/javascript; charset=utf-8";

    private static final Map<String, Resource> ALL = Map.of(
            "/", new Resource("page.html", "text/html; charset=utf-8"),
            "/page.css", new Resource("page.css", "text/css; charset=utf-8"),
            "/page.js", new Resource("page.js", SCRIPT),
            "/elements.js", new Resource("elements.js", SCRIPT),
            "/list.js", new Resource("list.js", SCRIPT),
            "/lines.js", new Resource("lines.js", SCRIPT),
            "/phrase.js", new Resource("phrase.js", SCRIPT),
            "/cards.js", new Resource("cards.js", SCRIPT),
            "/words.js", new Resource("words.js", SCRIPT));

    private record Resource(String name, String type) {}

    private Resources() {}

    static Optional<Answer> at(String path) {
        return Optional.ofNullable(ALL.get(path)).map(found -> Answer.of(found.type(), read(found.name())));
    }

    private static byte[] read(String name) {
        try (InputStream in = Resources.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("no " + name);
            }
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(name + " cannot be read", broken);
        }
    }
}
