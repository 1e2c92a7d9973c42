package org.drillwright.print.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.CardSize;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.layout.words.CardWriter;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.layout.words.Sentences;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.text.GlyphCoverage;
import org.drillwright.print.text.Typefaces;
import org.drillwright.print.text.Wording;

/**
 * Lays drills as cards. All type is of its scale's five sizes, whatever a drill says. What does not fit gives way in whole
 * steps: first the pictures of counts in which nothing is aimed, if that brings the drill on one side; then counts go
 * over to the back, then to a second card. Nothing is cut off: what cannot be printed whole is not printed, and said to
 * be so.
 */
public final class CardLayout {

    private final Format format;
    private final Labels labels;
    private final Typefaces faces;
    private final Back back;
    private final List<CardSides> cards = new ArrayList<>();
    private final List<CardProblem> problems = new ArrayList<>();

    private CardLayout(Format format, Back back, Labels labels, Typefaces faces) {
        this.format = format;
        this.back = back;
        this.labels = labels;
        this.faces = faces;
    }

    /** Cards of a size, in its usual type; backs stay blank where no count goes over to them. */
    public static Laid lay(List<CardSubject> drills, CardSize size, Labels labels, Typefaces faces) {
        return lay(drills, Format.of(size), Back.NONE, labels, faces);
    }

    /**
     * Cards are laid by all processors at once: no drill's cards depend on another's. A back is printed where no count
     * goes over to it.
     */
    public static Laid lay(List<CardSubject> drills, Format format, Back back, Labels labels, Typefaces faces) {
        Stream<CardSubject> all = drills.size() == 1 ? drills.stream() : drills.parallelStream();
        List<CardLayout> each = all.map(drill -> {
                    CardLayout layout = new CardLayout(format, back, labels, faces);
                    layout.lay(drill);
                    return layout;
                })
                .toList();
        return new Laid(
                each.stream().flatMap(layout -> layout.cards.stream()).toList(),
                each.stream().flatMap(layout -> layout.problems.stream()).toList());
    }

    /** What cannot be printed of a drill because the typefaces lack it, found without laying anything. */
    public static List<CardProblem> unprintable(CardSubject subject, Typefaces faces) {
        GlyphCoverage coverage = new GlyphCoverage(faces);
        List<CardProblem> problems = new ArrayList<>();
        for (Fields.Field field : Fields.of(subject)) {
            for (int codePoint : coverage.missing(field.text())) {
                problems.add(new CardProblem(
                        CardProblem.Kind.NOT_PRINTED,
                        subject.drill().id(),
                        field.name(),
                        Sentences.lacking(codePoint)));
            }
        }
        return problems;
    }

    /** Whether a drill is written in letters that every Latin typeface has. */
    public static boolean isPlain(CardSubject subject) {
        return Fields.of(subject).stream().allMatch(field -> GlyphCoverage.isPlain(field.text()));
    }

    private void lay(CardSubject subject) {
        List<CardProblem> unprintable = unprintable(subject, faces);
        if (!unprintable.isEmpty()) {
            problems.addAll(unprintable);
            return;
        }
        CardText text = new CardWriter(subject, labels, faces).write();
        Composition composition = composed(text);
        Formats formats = new Formats(text, labels, faces);
        if (!composition.isWhole()) {
            problems.add(new CardProblem(
                    CardProblem.Kind.NOT_PRINTED,
                    subject.drill().id(),
                    "",
                    Sentences.tooLong(format.size(), formats.smallest(format.size(), Integer.MAX_VALUE))));
            return;
        }
        List<CardSides> sides = composition.cards(behind(text, composition, subject));
        cards.addAll(text.rightToLeft() ? sides.stream().map(this::mirrored).toList() : sides);
        remark(subject, composition, formats);
    }

    private CardSides mirrored(CardSides card) {
        return new CardSides(Mirrored.of(card.front(), faces), card.back().map(back -> Mirrored.of(back, faces)));
    }

    /** Without the pictures in which nothing is aimed where that brings the whole drill on one side, or on fewer cards. */
    private Composition composed(CardText text) {
        Composition whole = new Composition(text, format.grid(), labels, faces);
        if (whole.isOneSide()) {
            return whole;
        }
        Composition fewer = whole.withoutQuietPictures();
        return fewer.isOneSide() || fewer.cards() < whole.cards() ? fewer : whole;
    }

    private Optional<Frame> behind(CardText text, Composition composition, CardSubject subject) {
        return switch (back) {
            case NONE -> Optional.empty();
            case SAFETY -> {
                Optional<Frame> conduct =
                        SafetyCard.behind(format.grid(), subject.school().name(), text.rightToLeft(), labels, faces);
                if (conduct.isEmpty()) {
                    problems.add(new CardProblem(
                            CardProblem.Kind.PRINTED,
                            subject.drill().id(),
                            "",
                            Sentences.conductTooLong(format.size())));
                }
                yield conduct;
            }
            case PICTURES -> {
                if (!format.grid().isRinged() || !composition.isOneSide()) {
                    yield Optional.empty();
                }
                Optional<Frame> pictures = new PictureBack(text, format, faces).frame();
                if (pictures.isEmpty()) {
                    problems.add(new CardProblem(
                            CardProblem.Kind.PRINTED, subject.drill().id(), "", Sentences.backTooLong(format.size())));
                }
                yield pictures;
            }
        };
    }

    private void remark(CardSubject subject, Composition composition, Formats formats) {
        String id = subject.drill().id();
        int handy = Formats.handy(format.size());
        if (composition.cards() > handy) {
            problems.add(new CardProblem(
                    CardProblem.Kind.PRINTED,
                    id,
                    "",
                    Sentences.manyCards(composition.cards(), format.size(), formats.smallest(format.size(), handy))));
        }
        for (String word : composition.broken()) {
            problems.add(new CardProblem(CardProblem.Kind.PRINTED, id, fieldOf(word, subject), Sentences.broken(word)));
        }
    }

    private static String fieldOf(String word, CardSubject subject) {
        return Fields.of(subject).stream()
                .filter(field ->
                        Wording.clean(field.text()).replace("\u00AD", "").contains(word))
                .map(Fields.Field::name)
                .findFirst()
                .orElse("");
    }
}
