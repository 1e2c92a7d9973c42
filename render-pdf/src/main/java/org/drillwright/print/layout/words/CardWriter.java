package org.drillwright.print.layout.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.mark.PrintMark;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Feet;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.diagram.Pictures;
import org.drillwright.print.frame.Face;
import org.drillwright.print.text.Lettering;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;

/** Writes what a card says, in the author's words and the school's labels. */
public final class CardWriter {

    /** Stands where a side has nothing to do, so that nobody takes the gap for a fault of the printer. */
    private static final String NOTHING = "—";

    /** Keeps the dot with the item before it. */
    private static final String DOT = "\u00A0· ";

    private final CardSubject subject;
    private final Drill drill;
    private final Labels labels;
    private final Typefaces faces;
    private final AuthorsWords words;
    private final List<Picture> pictures;

    public CardWriter(CardSubject subject, Labels labels, Typefaces faces) {
        this.subject = subject;
        this.drill = subject.drill();
        this.labels = labels;
        this.faces = faces;
        this.words = subject.words();
        this.pictures = subject.replay()
                .map(replay -> Pictures.of(replay, labels.language()))
                .orElse(List.of());
    }

    public CardText write() {
        return new CardText(
                one(drill.title().isBlank() ? drill.id() : drill.title(), Face.BOLD, in("title")),
                about(),
                present(
                        gear(),
                        labelled(Label.OPENING, drill.opening(), TextPlace.of("opening")),
                        labelled(Label.START, drill.start(), TextPlace.of("start"))),
                heads(),
                IntStream.range(0, drill.steps().size()).mapToObj(this::count).toList(),
                labelled(Label.CLOSING, drill.closing(), TextPlace.of("closing")),
                repeat(),
                IntStream.range(0, drill.cautions().size())
                        .mapToObj(this::caution)
                        .filter(caution -> !caution.isEmpty())
                        .toList(),
                foot(),
                subject.draft() ? Optional.of(labels.text(Label.DRAFT)) : Optional.empty(),
                isSolo() && pictures.stream().allMatch(Picture::isAlone),
                isRightToLeft(),
                present(
                        labelled(Label.PURPOSE, drill.purpose(), in("purpose")),
                        related(Label.NEEDS, subject.needs()),
                        related(Label.LEADS_TO, subject.leadsTo())));
    }

    /** As most letters of its title and its turns are. */
    private boolean isRightToLeft() {
        return Lettering.isRightToLeft(subject.said());
    }

    private boolean isSolo() {
        return drill.form() == Form.SOLO;
    }

    private Paragraph about() {
        Locale locale = labels.language().locale();
        String level = drill.level().isEmpty()
                ? ""
                : drill.level().substring(0, 1).toUpperCase(locale)
                        + drill.level().substring(1);
        String rest = labels.weapon(drill.weapon()) + DOT + labels.form(drill.form());
        return Paragraph.of(
                faces,
                List.of(new Styled(level, Face.BOLD), new Styled(level.isEmpty() ? rest : "· " + rest, Face.REGULAR)));
    }

    private CardText.Heads heads() {
        return new CardText.Heads(
                labels.text(isSolo() ? Label.CALLER : Label.LEADER),
                labels.text(isSolo() ? Label.CLASS : Label.FOLLOWER),
                labels.text(Label.DISTANCE),
                labels.text(Label.SAFETY));
    }

    private CardText.Count count(int at) {
        Step step = drill.steps().get(at);
        TextPlace place = TextPlace.of("steps").item(at);
        return new CardText.Count(
                String.valueOf(step.number().orElse(at + 1)),
                one(step.call(), Face.BOLD, words.of(place.key("call"), words.leader())),
                turn(step.leader(), isSolo() ? Face.BOLD : Face.REGULAR, place.key("leader"), words.leader()),
                turn(step.follower(), Face.REGULAR, place.key("follower"), words.follower()),
                one(step.distance(), Face.REGULAR, words.of(place.key("distance"))),
                words.ends().contains(at),
                one(step.safety(), Face.REGULAR, words.of(place.key("safety"))),
                picture(at),
                subject.replay()
                        .filter(replay -> at < replay.counts().size())
                        .filter(replay -> isQuiet(replay.counts().get(at)))
                        .isPresent());
    }

    /** None where nothing changes: the picture before it stands for it. */
    private Optional<Picture> picture(int at) {
        return at < pictures.size() ? Optional.of(pictures.get(at)).filter(Picture::changes) : Optional.empty();
    }

    private static boolean isQuiet(Count count) {
        boolean stroke = IntStream.range(0, count.moves().size())
                .anyMatch(at -> AttackEnd.of(count, at).isPresent());
        return !stroke && Arrays.stream(Side.values()).allMatch(side -> isQuiet(count, side));
    }

    private static boolean isQuiet(Count count, Side side) {
        boolean lunged = count.end().of(side).feet().is(Feet.LUNGED);
        return count.end().of(side).feet().isKnown()
                && !lunged
                && count.begin().on(side).isKnown()
                && count.begin().attackOn(side).isEmpty();
    }

    private Paragraph turn(Optional<Turn> turn, Face face, TextPlace place, Locale usual) {
        String said = turn.map(Turn::say).filter(say -> !say.isBlank()).orElse(NOTHING);
        return Paragraph.of(faces, parts(said, face, place, words.of(place, usual)));
    }

    /** A text, and what it ends with in another language. */
    private List<Styled> parts(String said, Face face, TextPlace place, Locale language) {
        Optional<AuthorsWords.Behind> behind = words.behind(place, said);
        String own = said.substring(
                        0,
                        said.length() - behind.map(end -> end.words().length()).orElse(0))
                .strip();
        return Stream.concat(
                        Stream.of(new Styled(own, face, AuthorsWords.among(labels, language))),
                        behind.stream()
                                .map(end -> new Styled(end.words(), face, AuthorsWords.among(labels, end.language()))))
                .toList();
    }

    private Paragraph labelled(Label label, String said, TextPlace place) {
        if (said.isBlank()) {
            return plain("");
        }
        return Paragraph.of(
                faces,
                Stream.concat(
                                Stream.of(new Styled(labels.text(label), Face.BOLD)),
                                parts(said, Face.REGULAR, place, words.of(place)).stream())
                        .toList());
    }

    /** The drill's own gear is in the author's words, what is usual in the school's. */
    private Paragraph gear() {
        List<String> items = subject.school().gearOf(drill);
        TextPlace place = TextPlace.of("gear");
        boolean alike = IntStream.range(0, items.size())
                .mapToObj(at -> words.of(place.item(at)))
                .allMatch(words.drill()::equals);
        if (drill.gear().isEmpty() || alike) {
            Locale language = drill.gear().isEmpty() ? labels.language().locale() : words.drill();
            return labelled(Label.GEAR, String.join(DOT, items), language);
        }
        List<Styled> parts = new ArrayList<>(List.of(new Styled(labels.text(Label.GEAR), Face.BOLD)));
        for (int at = 0; at < items.size(); at++) {
            String item = items.get(at) + (at < items.size() - 1 ? DOT.strip() : "");
            parts.add(new Styled(item, Face.REGULAR, AuthorsWords.among(labels, words.of(place.item(at)))));
        }
        return Paragraph.of(faces, parts);
    }

    private Locale in(String key) {
        return words.of(TextPlace.of(key));
    }

    private Paragraph caution(int at) {
        Locale language = words.of(TextPlace.of("cautions").item(at));
        return one(drill.cautions().get(at), Face.REGULAR, language);
    }

    private Paragraph repeat() {
        if (drill.repeat() > 1) {
            return bold(labels.text(drill.swap() ? Label.REPEAT_SWAP : Label.REPEAT, drill.repeat()));
        }
        return bold(drill.swap() ? labels.text(Label.SWAP) : "");
    }

    private CardText.Foot foot() {
        String place = subject.place()
                .map(at -> at.set() + " "
                        + labels.text(Label.ONE_OF, at.number(), at.of()).replace(' ', '\u00A0'))
                .orElse("");
        String revised =
                drill.revised().map(date -> labels.text(Label.REVISED, date)).orElse("");
        String line = Stream.of(subject.school().name(), place, revised)
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining(DOT));
        String said = String.join(" ", subject.footerRemarks());
        String remarks = said.isEmpty() || line.isEmpty() ? said : said + DOT.strip();
        // A draft is not for the ring, and what is mended in it may be what its card says.
        String mark = subject.draft()
                ? labels.text(Label.DRAFT)
                : PrintMark.of(drill, subject.school()).shown();
        return new CardText.Foot(
                plain(labels.text(Label.DEFERRAL_SHORT)),
                Paragraph.of(faces, List.of(new Styled(remarks, Face.BOLD), new Styled(line, Face.REGULAR))),
                bold(mark));
    }

    /** Which cards come before this one, or after it. */
    private Paragraph related(Label label, List<CardSubject.Place> cards) {
        String own = subject.place().map(CardSubject.Place::set).orElse("");
        String numbers = cards.isEmpty() ? "" : labels.text(Label.RELATED, CardNumbers.of(cards, own));
        return labelled(label, numbers, labels.language().locale());
    }

    private Paragraph labelled(Label label, String said, Locale language) {
        if (said.isBlank()) {
            return plain("");
        }
        return Paragraph.of(
                faces,
                List.of(
                        new Styled(labels.text(label), Face.BOLD),
                        new Styled(said, Face.REGULAR, AuthorsWords.among(labels, language))));
    }

    private Paragraph one(String said, Face face, Locale language) {
        return Paragraph.of(faces, List.of(new Styled(said, face, AuthorsWords.among(labels, language))));
    }

    private Paragraph plain(String words) {
        return Paragraph.of(faces, Face.REGULAR, words);
    }

    private Paragraph bold(String words) {
        return Paragraph.of(faces, Face.BOLD, words);
    }

    private static List<Paragraph> present(Paragraph... paragraphs) {
        return Stream.of(paragraphs).filter(words -> !words.isEmpty()).toList();
    }
}
