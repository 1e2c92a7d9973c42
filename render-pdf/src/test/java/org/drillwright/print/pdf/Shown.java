package org.drillwright.print.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.diagram.Counts;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.Laid;
import org.drillwright.print.layout.SafetyCard;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.school.SchoolFolder;

/** One drill on every kind of card, as the page of cards shows it. */
enum Shown {
    A6,
    A6_BACK,
    A7,
    INDEX_4X6,
    A5,
    WALL_A4,
    SABRE,
    FRENCH,
    ITALIAN,
    CONDUCT,
    COUNTS;

    private static final Path LANGUAGES =
            Path.of("src", "test", "resources", "org", "drillwright", "print", "languages");

    /** How many an inch. */
    int dots() {
        return switch (this) {
            case WALL_A4 -> 72;
            case COUNTS -> 120;
            default -> 100;
        };
    }

    private static final Map<Shown, Frame> LAID = new EnumMap<>(Shown.class);

    /** Laid once. */
    Frame frame() {
        return LAID.computeIfAbsent(this, Shown::lay);
    }

    private Frame lay() {
        return switch (this) {
            case A6 -> front(CardSize.A6);
            case A6_BACK -> laid(CardSize.A6).cards().get(0).back().orElseThrow();
            case A7 -> front(CardSize.A7);
            case INDEX_4X6 -> front(CardSize.INDEX_4X6);
            case A5 -> front(CardSize.A5);
            case WALL_A4 -> front(CardSize.WALL_A4);
            case SABRE ->
                lay(Example.card(Example.drill("sabre-cut-to-head")), CardSize.A6, Language.ENGLISH)
                        .fronts()
                        .get(0);
            case FRENCH -> translated("parade-de-quarte", new Language("fr"));
            case ITALIAN -> translated("parata-di-quarta", new Language("it"));
            case CONDUCT ->
                SafetyCard.lay(
                                Grid.of(CardSize.A6),
                                Example.drills().get(0).school().name(),
                                Labels.in(Language.ENGLISH),
                                Family.dejaVu())
                        .front();
            case COUNTS -> Counts.sheet();
        };
    }

    Path file() {
        return Path.of("docs", "pictures", name().toLowerCase(Locale.ROOT).replace('_', '-') + ".png");
    }

    private static Frame front(CardSize size) {
        return laid(size).fronts().get(0);
    }

    private static Laid laid(CardSize size) {
        return lay(Example.card(Example.drill("parry-of-quarte")), size, Language.ENGLISH);
    }

    private static Laid lay(CardSubject card, CardSize size, Language language) {
        return CardLayout.lay(List.of(card), Format.of(size), Back.PICTURES, Labels.in(language), Family.dejaVu());
    }

    private static Frame translated(String id, Language language) {
        try {
            Subject drill = SchoolFolder.open(LANGUAGES.resolve(language.word()))
                    .entry(id)
                    .orElseThrow()
                    .subject()
                    .orElseThrow();
            CardSubject card = new CardSubject(
                    drill.drill(), drill.school(), Optional.empty(), false, List.of(), Optional.of(drill.replay()));
            return CardLayout.lay(List.of(card), CardSize.A6, Labels.in(language), Family.dejaVu())
                    .fronts()
                    .get(0);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
