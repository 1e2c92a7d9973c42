package org.drillwright.print.command.watch.page;

import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.wording.Bundle;
import org.drillwright.wording.Direction;

/** The page itself, in a language: where its file has a key, in braces, the words of that key stand. */
final class PageHtml {

    /** A key, and behind a bar the element that its words have a gap for. */
    private static final Pattern KEY = Pattern.compile("\\{([a-z.]+)(?:\\|([^}]*))?\\}");

    private PageHtml() {}

    /** @param file the page with its keys */
    static String of(String file, Locale language) {
        Bundle words = Bundle.in(PageHtml.class, language);
        Matcher keys = KEY.matcher(file);
        StringBuilder page = new StringBuilder();
        while (keys.find()) {
            String told = switch (keys.group(1)) {
                case "lang" -> language.toLanguageTag();
                case "dir" -> Direction.of(language).word();
                default -> marked(words.text(keys.group(1)));
            };
            String element = Objects.requireNonNullElse(keys.group(2), "");
            keys.appendReplacement(page, Matcher.quoteReplacement(told.replace("{0}", element)));
        }
        return keys.appendTail(page).toString();
    }

    private static String marked(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
