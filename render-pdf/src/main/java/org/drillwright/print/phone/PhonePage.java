package org.drillwright.print.phone;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.drillwright.model.School;
import org.drillwright.print.frame.Face;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.svg.Symbols;
import org.drillwright.print.text.Typefaces;

/**
 * A set as one page: the safety card, the list, every card. Without its script it is read from top to bottom; with it,
 * one card at a time, count by count. Nothing is asked of any other place, and nothing that a drill holds is run.
 */
public final class PhonePage {

    /** How each of these pages begins, by which it is known for one that may be replaced. */
    public static final String BEGINNING = "<!DOCTYPE html><!-- Drillwright -->";

    /** Letters that may be typed into the field, whatever the drills hold. */
    private static final int FIRST_TYPED = ' ';

    private static final int LAST_TYPED = '~';

    /** A font's file cut down to some characters. */
    @FunctionalInterface
    public interface Cut {
        byte[] file(Face face, Set<Integer> codePoints);
    }

    private final School school;
    private final String set;
    private final List<PhoneDrill> drills;
    private final Voice voice;
    private final Typefaces faces;
    private final Cut cut;

    /** @param set its name */
    public PhonePage(School school, String set, List<PhoneDrill> drills, Typefaces faces, Cut cut) {
        this.school = school;
        this.set = set;
        this.drills = List.copyOf(drills);
        this.voice = new Voice(Labels.in(school.language()));
        this.faces = faces;
        this.cut = cut;
    }

    /** The same drills give the same page. */
    public byte[] write() {
        Symbols symbols = new Symbols(faces);
        String body = body(symbols);
        String style = style(body, Resources.text("page.css") + symbols.rules());
        String script = Resources.text("page.js");
        Html page = new Html();
        page.markup(BEGINNING)
                .line()
                .start("html", "lang", voice.tag(), "dir", "ltr")
                .start("head");
        page.start("meta", "charset", "utf-8");
        page.start("meta", "http-equiv", "Content-Security-Policy", "content", policy(style, script));
        page.start(
                "meta",
                "name",
                "viewport",
                "content",
                "width=device-width, initial-scale=1, viewport-fit=cover, interactive-widget=resizes-content");
        page.start("meta", "name", "color-scheme", "content", "only light");
        page.start("meta", "name", "referrer", "content", "no-referrer");
        page.put("title", title()).line();
        page.start("style").markup(style).end("style").line();
        page.start("script").markup(script).end("script").end("head").line();
        page.markup(body).end("html").line();
        return page.toString().getBytes(StandardCharsets.UTF_8);
    }

    private String title() {
        String name = voice.capitalised(set);
        return school.name().isBlank() ? name : name + " – " + school.name();
    }

    private String body(Symbols symbols) {
        Signs signs = Signs.in(symbols);
        StringBuilder articles = new StringBuilder(SafetyArticle.write(voice, symbols));
        articles.append(new Contents(drills, voice).write());
        for (int at = 0; at < drills.size(); at++) {
            articles.append(new Article(drills.get(at), at + 1, voice, symbols, signs, drills).write());
        }
        Html html = new Html();
        html.start(
                "body",
                "data-next",
                voice.text(Word.NEXT),
                "data-back",
                voice.text(Word.BACK),
                "data-card",
                voice.text(Word.CARD),
                "data-all",
                voice.text(Word.ALL_DRILLS),
                "data-run",
                voice.text(Word.RUN),
                "data-stop",
                voice.text(Word.STOP),
                "data-time",
                voice.text(Word.TIME),
                "data-found",
                voice.text(Word.FOUND),
                "data-found-level",
                voice.text(Word.FOUND_LEVEL),
                "data-copied",
                voice.text(Word.COPIED),
                "data-copy-yourself",
                voice.text(Word.COPY_YOURSELF),
                "data-forgets",
                voice.text(Word.FORGETS),
                "data-class",
                voice.text(Word.CLASS),
                "data-kept",
                "drillwright done " + school.name() + " / " + set);
        html.line().markup(symbols.drawings()).line();
        html.start("header", "class", "top").start("h1");
        voice.author(html, voice.capitalised(set), voice.tag(), false);
        html.end("h1").start("p");
        voice.author(html, school.name(), voice.tag(), false);
        html.end("p").put("p", voice.text(Word.NEEDS_NO_NETWORK)).end("header").line();
        html.start("main")
                .line()
                .markup(articles.toString())
                .markup(Bars.cells(voice))
                .end("main")
                .line();
        return html.markup(Bars.write(drills, voice)).end("body").line().toString();
    }

    private String style(String body, String rules) {
        Set<Integer> letters = new TreeSet<>();
        (body + rules).codePoints().filter(point -> point >= FIRST_TYPED).forEach(letters::add);
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
                + "'; font-src data:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types 'none'";
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
