package org.drillwright.print.command.printing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.impose.Leaf;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.Laid;
import org.drillwright.print.layout.Problem;
import org.drillwright.print.layout.SafetyCard;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.Typefaces;

/** Lays drill after drill as cards, and keeps what there is to say about them. */
final class Cards {

    private final Choices choices;
    private final Labels labels;
    private final Typefaces faces;
    private final List<Frame> safety;
    private final List<Problem> problems = new ArrayList<>();
    private int laid;

    Cards(Choices choices, Labels labels, Typefaces faces) {
        this.choices = choices;
        this.labels = labels;
        this.faces = faces;
        this.safety = choices.back() == Back.SAFETY ? SafetyCard.lay(choices.size(), labels, faces) : List.<Frame>of();
    }

    /** A drill's cards; none, with a problem, if it cannot be printed whole. */
    List<LaidCard> lay(CardSubject drill) {
        Back own = choices.back() == Back.SAFETY ? Back.NONE : choices.back();
        Laid cards = CardLayout.lay(List.of(drill), choices.size(), own, labels, faces);
        problems.addAll(cards.problems());
        String set = drill.place().map(CardSubject.Place::set).orElse("");
        int of = cards.cards().size();
        return IntStream.range(0, of)
                .mapToObj(at -> new LaidCard(set, drill.drill().id(), at + 1, of, leaf(cards, at)))
                .toList();
    }

    private Leaf leaf(Laid cards, int at) {
        return new Leaf(cards.cards().get(at), behind(cards, at));
    }

    /** Where the safety card takes several cards, they take turns over all that is printed. */
    private Optional<Frame> behind(Laid cards, int at) {
        if (!safety.isEmpty()) {
            return Optional.of(safety.get(laid++ % safety.size()));
        }
        return cards.backs().isEmpty()
                ? Optional.empty()
                : Optional.of(cards.backs().get(at));
    }

    /** What there is to say about the cards laid so far. */
    List<Problem> problems() {
        return List.copyOf(problems);
    }
}
