package org.drillwright.print.layout.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import org.drillwright.print.frame.Face;
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
    private final List<Picture> pictures;

    public CardWriter(CardSubject subject, Labels labels, Typefaces faces) {
        this.subject = subject;
        this.drill = subject.drill();
        this.labels = labels;
        this.faces = faces;
        this.pictures = subject.replay()
                .map(replay -> Pictures.of(replay, labels.language()))
                .orElse(List.of());
    }

    public CardText write() {
        return new CardText(
                bold(drill.title().isBlank() ? drill.id() : drill.title()),
                about(),
                labelled(Label.GEAR, String.join(DOT, subject.school().gearOf(drill))),
                present(labelled(Label.OPENING, drill.opening()), labelled(Label.START, drill.start())),
                heads(),
                IntStream.range(0, drill.steps().size()).mapToObj(this::count).toList(),
                after(),
                foot(),
                subject.draft() ? Optional.of(labels.text(Label.DRAFT)) : Optional.empty());
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
        boolean solo = drill.form() == Form.SOLO;
        return new CardText.Heads(
                bold(labels.text(Label.COUNT)),
                bold(labels.text(solo ? Label.CALLER : Label.LEADER)),
                bold(labels.text(solo ? Label.CLASS : Label.FOLLOWER)),
                bold(labels.text(Label.DISTANCE)),
                bold(labels.text(Label.SAFETY)));
    }

    private CardText.Count count(int at) {
        Step step = drill.steps().get(at);
        return new CardText.Count(
                String.valueOf(step.number().orElse(at + 1)),
                labelled(Label.CALL, step.call()),
                turn(step.leader()),
                turn(step.follower()),
                plain(step.distance()),
                plain(step.safety()),
                at < pictures.size() ? Optional.of(pictures.get(at)) : Optional.empty());
    }

    private Paragraph turn(Optional<Turn> turn) {
        return plain(turn.map(Turn::say).filter(say -> !say.isBlank()).orElse(NOTHING));
    }

    private List<Paragraph> after() {
        List<Paragraph> after = new ArrayList<>(present(labelled(Label.CLOSING, drill.closing()), repeat()));
        drill.cautions().forEach(caution -> after.addAll(present(labelled(Label.CAUTION, caution))));
        return after;
    }

    private Paragraph repeat() {
        if (drill.repeat() > 1) {
            return bold(labels.text(drill.swap() ? Label.REPEAT_SWAP : Label.REPEAT, drill.repeat()));
        }
        return bold(drill.swap() ? labels.text(Label.SWAP) : "");
    }

    private List<Paragraph> foot() {
        String place = subject.place()
                .map(at -> at.set() + DOT + labels.text(Label.ONE_OF, at.number(), at.of()))
                .orElse("");
        String revised =
                drill.revised().map(date -> labels.text(Label.REVISED, date)).orElse("");
        // A draft is not for the ring, and what is mended in it may be what its card says.
        String mark = subject.draft()
                ? ""
                : labels.text(Label.MARK, PrintMark.of(drill, subject.school()).shown());
        String line = String.join(
                DOT,
                Stream.of(subject.school().name(), place, revised, mark)
                        .filter(part -> !part.isBlank())
                        .toList());
        List<Paragraph> foot = new ArrayList<>();
        subject.footerRemarks().forEach(remark -> foot.addAll(present(bold(remark))));
        foot.add(plain(labels.text(Label.DEFERRAL)));
        foot.addAll(present(plain(line)));
        return foot;
    }

    private Paragraph labelled(Label label, String words) {
        if (words.isBlank()) {
            return plain("");
        }
        return Paragraph.of(faces, List.of(new Styled(labels.text(label), Face.BOLD), new Styled(words, Face.REGULAR)));
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
