package org.drillwright.print.command.printing.chosen;

import java.util.List;
import org.drillwright.check.Subject;
import org.drillwright.model.School;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.CardProblem;
import org.drillwright.print.layout.Laid;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.Typefaces;
import org.drillwright.source.Finding;
import org.drillwright.wording.Message;

/**
 * A drill's cards as they would be printed now, marked as a draft if it has errors.
 *
 * @param cards every side that is printed; none if it cannot be printed whole
 * @param lacking characters that cannot be printed, each at its place
 * @param remarks what else there is to say about the cards, in sentences
 */
public record Preview(List<Frame> cards, List<Finding> lacking, List<Message> remarks) {

    public Preview {
        cards = List.copyOf(cards);
        lacking = List.copyOf(lacking);
        remarks = List.copyOf(remarks);
    }

    public static Preview of(ChosenDrill pick, Subject drill, School school, Typefaces faces) {
        Labels labels = Labels.in(school.language());
        CardSubject card = pick.card(drill, school, labels);
        Glyphs glyphs = new Glyphs(faces);
        if (!glyphs.look(drill, card)) {
            return new Preview(List.of(), glyphs.findings(), List.of());
        }
        Laid laid = CardLayout.lay(List.of(card), school.card(), labels, faces);
        return new Preview(
                laid.sides(),
                List.of(),
                laid.problems().stream().map(CardProblem::sentence).toList());
    }
}
