package org.drillwright.print.phone;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.mark.PrintMark;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.diagram.Pictures;
import org.drillwright.print.layout.words.AuthorsWords;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.TextPlace;
import org.drillwright.print.svg.Symbols;
import org.drillwright.print.text.Lettering;

/** One drill's card: before the counts, each count, after them; the same words as on paper, in the same order. */
final class Article {

    /** Stands where a side has nothing to do, so that nobody takes the gap for a fault. */
    private static final String NOTHING = "—";

    private static final String DOT = "\u00A0· ";

    /** How wide pictures are drawn, in points, as on a card of A6; screens show them at other sizes. */
    private static final double PICTURE = 80;

    /** One alone is as large as one of two where it takes so much of their width. */
    private static final double ALONE = 20.0 / 28;

    private final PhoneDrill of;
    private final Drill drill;
    private final int number;
    private final Voice voice;
    private final Symbols symbols;
    private final SignIcons signs;
    private final List<PhoneDrill> all;
    private final boolean turned;
    private final Html html = new Html();

    /**
     * @param number of the drill in the page, from 1
     * @param all drills of the page
     */
    Article(PhoneDrill of, int number, Voice voice, Symbols symbols, SignIcons signs, List<PhoneDrill> all) {
        this.of = of;
        this.drill = of.drill();
        this.number = number;
        this.voice = voice;
        this.symbols = symbols;
        this.signs = signs;
        this.all = all;
        this.turned = Lettering.isRightToLeft(of.card().said());
    }

    /** The id of a drill's card in the page. */
    static String id(int number) {
        return "drill-" + number;
    }

    String write() {
        html.start(
                "article",
                "id",
                id(number),
                "class",
                "view card",
                "dir",
                turned ? "rtl" : "ltr",
                "aria-labelledby",
                "title-" + number,
                "data-level",
                drill.level(),
                "data-tempo",
                String.valueOf(drill.tempo().orElse(of.card().school().count()).toMillis()),
                "data-times",
                String.valueOf(Math.max(1, drill.repeat())));
        html.line();
        header();
        opening();
        heads();
        counts();
        closing();
        foot();
        return html.end("article").line().toString();
    }

    private void header() {
        html.start("header").start("h2", "id", "title-" + number, "tabindex", "-1");
        author(of.title(), TextPlace.of("title"));
        html.end("h2").start("p", "class", "about");
        html.put("b", voice.capitalised(drill.level())).words(drill.level().isEmpty() ? "" : DOT);
        html.words(voice.labels().weapon(drill.weapon()) + DOT + voice.labels().form(drill.form()))
                .end("p");
        if (of.card().draft()) {
            html.put("p", voice.text(Label.DRAFT), "class", "draft");
        }
        html.end("header").line();
    }

    private void opening() {
        html.start("div", "class", "step before", "data-name", voice.text(PhoneText.OPEN));
        gear();
        labelled(Label.OPENING, drill.opening(), "opening");
        labelled(Label.START, drill.start(), "start");
        html.end("div").line();
    }

    private void heads() {
        html.start("p", "class", "heads", "aria-hidden", "true");
        html.markup(signs.leader()).words(" ").put("bdi", voice.text(leader())).words(" ");
        html.markup(signs.follower())
                .words(" ")
                .put("bdi", voice.text(follower()))
                .end("p")
                .line();
    }

    private Label leader() {
        return drill.form() == Form.SOLO ? Label.CALLER : Label.LEADER;
    }

    private Label follower() {
        return drill.form() == Form.SOLO ? Label.CLASS : Label.FOLLOWER;
    }

    private void counts() {
        List<Picture> pictures = of.card()
                .replay()
                .map(replay -> Pictures.of(replay, voice.labels().language()))
                .orElse(List.of());
        html.start("ol", "class", "counts", "role", "list").line();
        for (int at = 0; at < drill.steps().size(); at++) {
            count(
                    drill.steps().get(at),
                    at + 1,
                    at < pictures.size() ? Optional.of(pictures.get(at)) : Optional.empty());
        }
        html.end("ol").line();
    }

    private void count(Step step, int number, Optional<Picture> picture) {
        TextPlace place = TextPlace.of("steps").item(number - 1);
        String numeral = String.valueOf(step.number().orElse(number));
        html.start(
                "li",
                "class",
                "step count",
                "data-name",
                numeral,
                "data-said",
                voice.text(PhoneText.COUNT, numeral) + ". "
                        + picture.map(Picture::gist).orElse(""));
        html.start("p", "class", "number").put("span", voice.text(PhoneText.COUNT, ""), "class", "heard");
        html.words(numeral).end("p").start("div", "class", "words");
        if (!step.call().isBlank()) {
            html.start("p", "class", "call").put("span", voice.before(Label.CALLER), "class", "heard");
            html.start("b");
            author(step.call(), place.key("call"));
            html.end("b").end("p");
        }
        turn(leader(), signs.leader(), step.leader(), place.key("leader"));
        turn(follower(), signs.follower(), step.follower(), place.key("follower"));
        warning(Label.SAFETY, step.safety(), place.key("safety"));
        html.end("div").start("div", "class", "scene");
        if (!step.distance().isBlank()) {
            html.start("p", "class", "distance").put("span", voice.before(Label.DISTANCE), "class", "heard");
            author(step.distance(), place.key("distance"));
            html.end("p");
        }
        picture.ifPresent(this::pictures);
        html.end("div").end("li").line();
    }

    /** Of a count that holds several strokes, each of them side by side. */
    private void pictures(Picture picture) {
        if (picture.strokes().isEmpty()) {
            picture(picture);
            return;
        }
        html.start("div", "class", "strokes");
        picture.strokes().forEach(this::picture);
        html.end("div");
    }

    private void picture(Picture picture) {
        boolean alone = drill.form() == Form.SOLO;
        html.markup(symbols.picture(
                picture.draw(0, 0, alone ? ALONE * PICTURE : PICTURE), alone ? "picture alone" : "picture"));
    }

    private void turn(Label who, String sign, Optional<Turn> turn, TextPlace place) {
        html.start("p", "class", "turn").markup(sign).put("span", voice.before(who), "class", "heard");
        author(turn.map(Turn::say).filter(say -> !say.isBlank()).orElse(NOTHING), place);
        html.end("p");
    }

    private void warning(Label label, String words, TextPlace place) {
        if (!words.isBlank()) {
            html.start("p", "class", "warning").markup(signs.warning());
            html.put("span", voice.before(label), "class", "heard");
            author(words, place);
            html.end("p");
        }
    }

    private void closing() {
        html.start("div", "class", "step after", "data-name", voice.text(PhoneText.CLOSE));
        labelled(Label.CLOSING, drill.closing(), "closing");
        String again = again();
        if (!again.isEmpty()) {
            html.start("p").put("b", again, "dir", voice.direction().word()).end("p");
        }
        for (int at = 0; at < drill.cautions().size(); at++) {
            warning(
                    Label.CAUTION,
                    drill.cautions().get(at),
                    TextPlace.of("cautions").item(at));
        }
        html.end("div").line();
    }

    private String again() {
        if (drill.repeat() > 1) {
            return voice.text(drill.swap() ? Label.REPEAT_SWAP : Label.REPEAT, drill.repeat());
        }
        return drill.swap() ? voice.text(Label.SWAP) : "";
    }

    private void foot() {
        html.start("div", "class", "more");
        labelled(Label.PURPOSE, drill.purpose(), "purpose");
        needs();
        html.end("div").start("footer");
        of.card()
                .footerRemarks()
                .forEach(remark -> html.start("p")
                        .put("b", remark, "dir", voice.direction().word())
                        .end("p"));
        html.start("p")
                .put(
                        "span",
                        voice.text(Label.DEFERRAL),
                        "dir",
                        voice.direction().word())
                .end("p");
        String place = of.card()
                .place()
                .map(at -> at.set() + DOT + voice.text(Label.ONE_OF, at.number(), at.of()))
                .orElse("");
        String revised =
                drill.revised().map(date -> voice.text(Label.REVISED, date)).orElse("");
        List<String> parts = Stream.of(of.card().school().name(), place, revised)
                .filter(part -> !part.isBlank())
                .toList();
        html.start("p").words(String.join(DOT, parts));
        if (!of.card().draft()) {
            PrintMark mark = PrintMark.of(drill, of.card().school());
            html.words(parts.isEmpty() ? "" : DOT).put("b", mark.shown(), "class", "mark");
        }
        html.end("p").end("footer");
    }

    /** Those that the page holds, each a way to its card. */
    private void needs() {
        Html needed = new Html();
        for (int at = 0; at < all.size(); at++) {
            if (drill.needs().contains(all.get(at).drill().id())) {
                needed.start("li").start("a", "href", "#" + id(at + 1));
                voice.author(needed, all.get(at).title(), all.get(at).titleTag(), turned);
                needed.end("a").end("li");
            }
        }
        if (!needed.toString().isEmpty()) {
            html.start("p").put("b", voice.text(Label.NEEDS)).end("p");
            html.start("ul", "class", "needs", "role", "list")
                    .markup(needed.toString())
                    .end("ul");
        }
    }

    private void author(String written, TextPlace place) {
        Optional<AuthorsWords.Behind> behind = of.card().words().behind(place, written);
        String own = written.substring(
                0, written.length() - behind.map(end -> end.words().length()).orElse(0));
        voice.author(html, own.stripTrailing(), of.tag(place), turned);
        behind.ifPresent(
                end -> voice.author(html.words(" "), end.words(), end.language().toLanguageTag(), turned));
    }

    private void gear() {
        List<String> items = of.card().school().gearOf(drill);
        TextPlace place = TextPlace.of("gear");
        boolean alike = IntStream.range(0, items.size())
                .mapToObj(at -> of.tag(place.item(at)))
                .allMatch(of.tag()::equals);
        if (alike) {
            labelled(Label.GEAR, String.join(DOT, items), "gear");
            return;
        }
        html.start("p").put("b", voice.text(Label.GEAR)).words(" ");
        for (int at = 0; at < items.size(); at++) {
            author(items.get(at), place.item(at));
            html.words(at < items.size() - 1 ? DOT : "");
        }
        html.end("p");
    }

    private void labelled(Label label, String words, String key) {
        if (!words.isBlank()) {
            html.start("p").put("b", voice.text(label)).words(" ");
            author(words, TextPlace.of(key));
            html.end("p");
        }
    }
}
