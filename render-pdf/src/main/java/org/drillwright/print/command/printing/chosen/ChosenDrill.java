package org.drillwright.print.command.printing.chosen;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.phrase.Replay;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.translation.Rendering;

/**
 * A drill that was picked for printing.
 *
 * @param place where it stands in its set, if it is in one
 * @param needs where the drills stand that it needs, as far as they are in sets
 * @param leadsTo where the drills stand that need it
 * @param rendering how it is said in another language, if it is printed in one
 */
public record ChosenDrill(
        Entry entry,
        Optional<CardSubject.Place> place,
        List<CardSubject.Place> needs,
        List<CardSubject.Place> leadsTo,
        Optional<Rendering> rendering) {

    /** A drill as it was written. */
    ChosenDrill(
            Entry entry,
            Optional<CardSubject.Place> place,
            List<CardSubject.Place> needs,
            List<CardSubject.Place> leadsTo) {
        this(entry, place, needs, leadsTo, Optional.empty());
    }

    public ChosenDrill {
        needs = List.copyOf(needs);
        leadsTo = List.copyOf(leadsTo);
    }

    /** A drill that is in no set. */
    public static ChosenDrill alone(Entry entry) {
        return new ChosenDrill(entry, Optional.empty(), List.of(), List.of());
    }

    /** The same place in its set for a drill read anew. */
    public ChosenDrill of(Entry other) {
        return new ChosenDrill(other, place, needs, leadsTo, rendering);
    }

    /**
     * The same drill in another language.
     *
     * @param word what a set is called in it
     */
    public ChosenDrill said(Rendering said, UnaryOperator<String> word) {
        return new ChosenDrill(
                new Entry(entry.file(), entry.name(), Optional.of(said.drill()), entry.findings()),
                place.map(at -> named(at, word)),
                needs.stream().map(at -> named(at, word)).toList(),
                leadsTo.stream().map(at -> named(at, word)).toList(),
                Optional.of(said));
    }

    private static CardSubject.Place named(CardSubject.Place at, UnaryOperator<String> word) {
        return new CardSubject.Place(word.apply(at.set()), at.number(), at.of());
    }

    public String id() {
        return DrillFiles.id(entry.file());
    }

    /** What its card says, marked as a draft if the drill has errors. */
    public CardSubject card(Subject drill, School school, Labels labels) {
        return card(drill, school, labels, Optional.of(drill.replay()));
    }

    /** The same without its pictures, for who looks at the words alone. */
    public CardSubject words(Subject drill, School school, Labels labels) {
        return card(drill, school, labels, Optional.empty());
    }

    private CardSubject card(Subject drill, School school, Labels labels, Optional<Replay> replay) {
        return new CardSubject(
                drill.drill(),
                school,
                place,
                !entry.isSound(),
                remarks(labels),
                needs,
                leadsTo,
                rendering.map(said -> Languages.of(said, school)).orElseGet(() -> Languages.of(drill, school)),
                replay);
    }

    /** What was not judged, and of which language the drill was made. */
    private List<String> remarks(Labels labels) {
        return Stream.concat(
                        Unjudged.remark(this, labels).stream(),
                        rendering.stream().flatMap(said -> madeFrom(said, labels)))
                .toList();
    }

    private static Stream<String> madeFrom(Rendering said, Labels labels) {
        Optional<Language> from = said.drill().drill().madeFrom();
        return Stream.concat(
                from.map(labels::madeFrom).stream(),
                said.beside().isEmpty() ? Stream.empty() : Stream.of(labels.text(Label.IN_BRACKETS)));
    }

    /** Whether there is a whole drill to print; a file never half-loads. */
    public boolean isReadable() {
        return entry.isWhole();
    }
}
