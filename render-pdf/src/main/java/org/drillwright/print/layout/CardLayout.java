package org.drillwright.print.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.CardSize;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.block.Plate;
import org.drillwright.print.layout.fit.CardArea;
import org.drillwright.print.layout.fit.Largest;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.layout.words.CardWriter;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.layout.words.Sentences;
import org.drillwright.print.text.Coverage;
import org.drillwright.print.text.Typefaces;
import org.drillwright.print.text.Wording;

/**
 * Lays drills as cards. The type is as large as lets a drill fit on one card; where even the smallest that can be read
 * does not, on as few cards as can be, and again as large as fits those. Nothing is cut off: what cannot be printed
 * whole is not printed, and said to be so.
 */
public final class CardLayout {

    /** Reading on a third card means laying two aside in the middle of a class. */
    private static final int HANDY = 2;

    private final CardSize size;
    private final CardArea area;
    private final Labels labels;
    private final Typefaces faces;
    private final Back back;
    private final List<Frame> cards = new ArrayList<>();
    private final List<Frame> backs = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    private CardLayout(CardSize size, Back back, Labels labels, Typefaces faces) {
        this.size = size;
        this.back = back;
        this.area = CardArea.of(size);
        this.labels = labels;
        this.faces = faces;
    }

    /** Cards with blank backs. */
    public static Laid lay(List<CardSubject> drills, CardSize size, Labels labels, Typefaces faces) {
        return lay(drills, size, Back.NONE, labels, faces);
    }

    /** Cards are laid by all processors at once: no drill's cards depend on another's. */
    public static Laid lay(List<CardSubject> drills, CardSize size, Back back, Labels labels, Typefaces faces) {
        Stream<CardSubject> all = drills.size() == 1 ? drills.stream() : drills.parallelStream();
        List<CardLayout> each = all.map(drill -> {
                    CardLayout layout = new CardLayout(size, back, labels, faces);
                    layout.lay(drill);
                    return layout;
                })
                .toList();
        List<Frame> cards =
                each.stream().flatMap(layout -> layout.cards.stream()).toList();
        return new Laid(
                cards,
                back == Back.SAFETY
                        ? SafetyCard.behind(cards.size(), size, labels, faces)
                        : each.stream().flatMap(layout -> layout.backs.stream()).toList(),
                each.stream().flatMap(layout -> layout.problems.stream()).toList());
    }

    /** What cannot be printed of a drill because the typefaces lack it, found without laying anything. */
    public static List<Problem> unprintable(CardSubject subject, Typefaces faces) {
        return unprintable(subject, Back.NONE, faces);
    }

    /** The same, with the words of a back. */
    public static List<Problem> unprintable(CardSubject subject, Back back, Typefaces faces) {
        Coverage coverage = new Coverage(faces);
        List<Problem> problems = new ArrayList<>();
        for (Fields.Field field : Fields.of(subject, back)) {
            for (int codePoint : coverage.missing(field.text())) {
                problems.add(new Problem(
                        Problem.Kind.NOT_PRINTED, subject.drill().id(), field.name(), Sentences.lacking(codePoint)));
            }
        }
        return problems;
    }

    private void lay(CardSubject subject) {
        List<Problem> unprintable = unprintable(subject, back, faces);
        if (!unprintable.isEmpty()) {
            problems.addAll(unprintable);
            return;
        }
        CardText text = new CardWriter(subject, labels, faces).write();
        Optional<Fitting> fitting = text.hasPictures() ? pictured(text) : fitting(text);
        Formats formats = new Formats(text.withoutPictures(), labels, faces);
        fitting.ifPresentOrElse(
                fitted -> take(subject, fitted, text.pictures(), formats),
                () -> problems.add(tooLong(subject, formats)));
    }

    private Optional<List<Frame>> behind(CardSubject subject, Fitting fitted, List<Picture> pictures) {
        return Stream.of(true, false)
                .map(spoken -> new BackCard(subject.drill(), pictures, labels, spoken))
                .map(card -> Largest.fitting(floor(), scale -> card.on(fitted.shares(), new Plate(area, scale, faces))))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** With pictures where that takes neither a card nor a broken word more. */
    private Optional<Fitting> pictured(CardText text) {
        Optional<Fitting> pictured = fitting(text);
        if (pictured.filter(Fitting::isAtItsBest).isPresent()) {
            return pictured;
        }
        Optional<Fitting> plain = fitting(text.withoutPictures());
        return pictured.filter(one -> plain.filter(one::isNoWorseThan).isPresent())
                .or(() -> plain);
    }

    private Optional<Fitting> fitting(CardText text) {
        return Fitting.find(at -> new Composition(text, area, at, labels, faces), floor());
    }

    private Scale floor() {
        return Scale.floor(size, faces);
    }

    private void take(CardSubject subject, Fitting fitted, List<Picture> pictures, Formats formats) {
        String id = subject.drill().id();
        if (back == Back.PICTURES) {
            Optional<List<Frame>> behind = behind(subject, fitted, pictures);
            if (behind.isEmpty()) {
                problems.add(new Problem(Problem.Kind.NOT_PRINTED, id, "", Sentences.backTooLong(size)));
                return;
            }
            backs.addAll(behind.get());
        } else if (!pictures.isEmpty() && !fitted.hasPictures()) {
            problems.add(new Problem(Problem.Kind.PRINTED, id, "", Sentences.noPictures(size)));
        }
        cards.addAll(fitted.cards());
        if (fitted.shares().size() > HANDY) {
            problems.add(new Problem(
                    Problem.Kind.PRINTED,
                    id,
                    "",
                    Sentences.manyCards(fitted.shares().size(), size, formats.smallest(size, HANDY))));
        }
        for (String word : fitted.broken()) {
            problems.add(new Problem(Problem.Kind.PRINTED, id, fieldOf(word, subject), Sentences.broken(word)));
        }
    }

    private Problem tooLong(CardSubject subject, Formats formats) {
        Optional<CardSize> larger = formats.smallest(size, Integer.MAX_VALUE);
        return new Problem(Problem.Kind.NOT_PRINTED, subject.drill().id(), "", Sentences.tooLong(size, larger));
    }

    private static String fieldOf(String word, CardSubject subject) {
        return Fields.of(subject, Back.NONE).stream()
                .filter(field ->
                        Wording.clean(field.text()).replace("\u00AD", "").contains(word))
                .map(Fields.Field::name)
                .findFirst()
                .orElse("");
    }
}
