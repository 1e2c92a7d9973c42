package org.drillwright.print.phone;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
        return new OnePage(voice, title(), "only light", cut).write(body(symbols), "page", symbols.rules());
    }

    private String title() {
        String name = voice.capitalised(set);
        return school.name().isBlank() ? name : name + " – " + school.name();
    }

    private String body(Symbols symbols) {
        SignIcons signs = SignIcons.in(symbols);
        StringBuilder articles = new StringBuilder(SafetyArticle.write(voice, symbols));
        articles.append(new CardList(drills, voice).write());
        for (int at = 0; at < drills.size(); at++) {
            articles.append(new Article(drills.get(at), at + 1, voice, symbols, signs, drills).write());
        }
        Html html = new Html();
        html.start("body", attributes());
        html.line().markup(symbols.drawings()).line();
        html.start("header", "class", "top").start("h1");
        voice.author(html, voice.capitalised(set), voice.tag());
        html.end("h1").start("p");
        voice.author(html, school.name(), voice.tag());
        html.end("p")
                .put("p", voice.text(PhoneText.NEEDS_NO_NETWORK))
                .end("header")
                .line();
        html.start("main")
                .line()
                .markup(articles.toString())
                .markup(Bars.cells(voice))
                .end("main")
                .line();
        return html.markup(Bars.write(drills, voice)).end("body").line().toString();
    }

    private String[] attributes() {
        List<String> attributes = new ArrayList<>(voice.attributes(
                PhoneText.NEXT,
                PhoneText.BACK,
                PhoneText.CARD,
                PhoneText.ALL_DRILLS,
                PhoneText.RUN,
                PhoneText.STOP,
                PhoneText.TIME,
                PhoneText.FOUND,
                PhoneText.FOUND_LEVEL,
                PhoneText.COPIED,
                PhoneText.COPY_YOURSELF,
                PhoneText.FORGETS,
                PhoneText.CLASS));
        attributes.addAll(List.of("data-kept", "drillwright done " + school.name() + " / " + set));
        return attributes.toArray(String[]::new);
    }
}
