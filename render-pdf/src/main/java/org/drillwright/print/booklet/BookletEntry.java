package org.drillwright.print.booklet;

import java.util.List;
import java.util.Locale;
import org.drillwright.mark.PrintMark;
import org.drillwright.model.Drill;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.RunRole;
import org.drillwright.print.layout.words.AuthorsWords;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.layout.words.TextPlace;
import org.drillwright.print.text.Styled;

/** A drill of the booklet. */
public record BookletEntry(CardSubject subject) {

    String id() {
        return drill().id();
    }

    Drill drill() {
        return subject.drill();
    }

    /** Its title, leading to its page. */
    Styled linked(String end, Labels labels) {
        return new Styled(title() + end, Face.REGULAR, span(labels, "title").to(id()));
    }

    /** How the author's words are marked among the booklet's own. */
    RunRole span(Labels labels, String key) {
        return AuthorsWords.among(labels, subject.words().of(TextPlace.of(key)));
    }

    String title() {
        return drill().title().isBlank() ? drill().id() : drill().title();
    }

    /** What stands at the foot of its cards; on a draft that it is one. */
    String mark(Labels labels) {
        return subject.draft()
                ? labels.text(Label.DRAFT)
                : PrintMark.of(drill(), subject.school()).shown();
    }

    /** What it stands under in the contents: its set, or its level if it is in none. */
    public String part() {
        return subject.place().map(CardSubject.Place::set).orElse(drill().level());
    }

    /** {@code Intermediate 3 of 16}; the level before a set that is called otherwise. */
    String standing(Labels labels) {
        String level = drill().level();
        String whole = subject.place()
                .map(place -> (place.set().equals(level) || level.isEmpty() ? place.set() : level + " · " + place.set())
                        + " " + labels.text(Label.ONE_OF, place.number(), place.of()))
                .orElse(level);
        return capital(whole, labels.language().locale());
    }

    static String capital(String words, Locale locale) {
        int first = words.isEmpty() ? 0 : words.offsetByCodePoints(0, 1);
        return words.substring(0, first).toUpperCase(locale) + words.substring(first);
    }

    /** Those of a booklet that a drill needs, or that need it, in the booklet's order. */
    List<BookletEntry> among(List<BookletEntry> all, boolean needed) {
        return all.stream()
                .filter(other -> needed
                        ? drill().needs().contains(other.id())
                        : other.drill().needs().contains(id()))
                .toList();
    }
}
