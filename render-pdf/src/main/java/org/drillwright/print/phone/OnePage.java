package org.drillwright.print.phone;

import java.lang.Character.UnicodeScript;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Set;
import java.util.TreeSet;
import org.drillwright.print.frame.Face;
import org.drillwright.wording.PackedFile;

/**
 * A page that is one file: its style, its script and its fonts in it, and a policy that lets nothing else in.
 *
 * @param schemes the colour schemes that it is made for, as CSS names them
 */
record OnePage(Voice voice, String title, String schemes, PhonePage.Cut cut) {

    /** Letters that may be typed into a field, whatever else the page holds. */
    private static final int FIRST_TYPED = ' ';

    private static final int LAST_TYPED = '~';

    /** Letters that stand as they are, whatever stands beside them; a font that was cut down joins none. */
    private static final Set<UnicodeScript> SINGLE = Set.of(
            UnicodeScript.COMMON,
            UnicodeScript.INHERITED,
            UnicodeScript.LATIN,
            UnicodeScript.GREEK,
            UnicodeScript.CYRILLIC,
            UnicodeScript.ARMENIAN,
            UnicodeScript.GEORGIAN,
            UnicodeScript.HEBREW);

    /**
     * The whole file.
     *
     * @param body the whole element, as markup of this program
     * @param kind what its files of rules and of what its script does beyond that of both pages are called
     * @param more rules beyond those of the file
     */
    byte[] write(String body, String kind, String more) {
        String script = PackedFile.text(OnePage.class, "both.js") + PackedFile.text(OnePage.class, kind + ".js");
        String style = style(body, PackedFile.text(OnePage.class, kind + ".css") + more);
        Html page = new Html();
        page.markup(PhonePage.BEGINNING)
                .line()
                .start("html", "lang", voice.tag(), "dir", voice.direction().word())
                .start("head");
        page.start("meta", "charset", "utf-8");
        page.start("meta", "http-equiv", "Content-Security-Policy", "content", policy(style, script));
        page.start(
                "meta",
                "name",
                "viewport",
                "content",
                "width=device-width, initial-scale=1, viewport-fit=cover, interactive-widget=resizes-content");
        page.start("meta", "name", "color-scheme", "content", schemes);
        page.start("meta", "name", "referrer", "content", "no-referrer");
        page.put("title", title).line();
        page.start("style").markup(style).end("style").line();
        page.start("script").markup(script).end("script").end("head").line();
        page.markup(body).end("html").line();
        return page.toString().getBytes(StandardCharsets.UTF_8);
    }

    private String style(String body, String rules) {
        Set<Integer> letters = new TreeSet<>();
        (body + rules)
                .codePoints()
                .filter(point -> point >= FIRST_TYPED && SINGLE.contains(UnicodeScript.of(point)))
                .forEach(letters::add);
        for (int typed = FIRST_TYPED; typed <= LAST_TYPED; typed++) {
            letters.add(typed);
        }
        StringBuilder style = new StringBuilder();
        for (Face face : Face.values()) {
            String file = Base64.getEncoder().encodeToString(Woff.of(cut.file(face, letters)));
            style.append("@font-face{font-family:Card;font-weight:")
                    .append(face == Face.BOLD ? 700 : 400)
                    .append(";src:url(data:font/woff;base64,")
                    .append(file)
                    .append(") format(\"woff\")}\n");
        }
        return style.append(rules).toString();
    }

    /** Content Security Policy Level 3: its own style and its own script, by their hashes, and nothing else. */
    private static String policy(String style, String script) {
        return "default-src 'none'; style-src '" + hash(style) + "'; script-src '" + hash(script)
                + "'; font-src data:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script';"
                + " trusted-types 'none'";
    }

    private static String hash(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
