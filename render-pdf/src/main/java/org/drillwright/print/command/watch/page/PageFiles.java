package org.drillwright.print.command.watch.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.print.command.watch.web.Answer;
import org.drillwright.wording.PackedFile;

/** The files that the page is made of, by the addresses under which they are had; there are no others. */
final class PageFiles {

    private static final String SCRIPT = "text/javascript; charset=utf-8";

    /** Each has its own name as its address. */
    private static final List<String> SCRIPTS = List.of(
            "page.js",
            "said.js",
            "elements.js",
            "list.js",
            "lines.js",
            "phrase.js",
            "pictures.js",
            "motion.js",
            "steady.js",
            "cards.js",
            "key.js",
            "words.js");

    private static final Map<String, Resource> ALL = all();

    private record Resource(String name, String type) {}

    private PageFiles() {}

    private static Map<String, Resource> all() {
        Map<String, Resource> all = new HashMap<>();
        all.put("/page.css", new Resource("page.css", "text/css; charset=utf-8"));
        SCRIPTS.forEach(name -> all.put("/" + name, new Resource(name, SCRIPT)));
        return Map.copyOf(all);
    }

    static Optional<Answer> at(String path) {
        return Optional.ofNullable(ALL.get(path))
                .map(found -> Answer.of(found.type(), PackedFile.text(PageFiles.class, found.name())));
    }

    /** The page itself, with keys in place of words. */
    static String page() {
        return PackedFile.text(PageFiles.class, "page.html");
    }
}
