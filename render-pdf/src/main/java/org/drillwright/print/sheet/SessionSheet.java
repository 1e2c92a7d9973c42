package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.partner.TwoSession;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Legibility;
import org.drillwright.print.text.Typefaces;
import org.drillwright.tell.Clock;
import org.drillwright.tell.SessionText;

/** A sheet for two who train without a teacher, with lines to write what they agree. */
public final class SessionSheet {

    private SessionSheet() {}

    public static List<Frame> pages(
            TwoSession session,
            Naming names,
            School school,
            Map<String, Drill> drills,
            SheetSize size,
            Typefaces faces) {
        Type type = Type.ofCapitals(faces, Legibility.inTheHand()).times(1.15);
        Paper paper = Paper.upright(size);
        Flow flow = new Flow(paper, Feet.of(type, paper, school.name()));
        double width = flow.width();
        flow.add(type.times(1.5)
                .paragraph(
                        Role.TITLE,
                        Face.BOLD,
                        "Training of " + names.of(session.one()) + " and " + names.of(session.other()),
                        width));
        session.facts().forEach(fact -> flow.add(type.paragraph(Role.PARAGRAPH, Face.REGULAR, fact, width)));
        Columns table = Columns.shared(type, width, 2, 8, 2, 4, 5);
        List<Piece> rows = new ArrayList<>();
        for (TwoSession.Block block : session.blocks()) {
            rows.add(table.row(
                    List.of(
                            Clock.of(block.start()),
                            SessionText.title(block.drill(), drills),
                            block.length().toMinutes() + " min",
                            names.of(block.leadsFirst()),
                            String.join(", ", block.worksOn())),
                    rows.size() % 2 == 1));
        }
        flow.table(
                List.of(type.paragraph(
                        Role.PARAGRAPH,
                        Face.REGULAR,
                        "Opening salute and warm-up first; closing and salute last. Half of each block, then the"
                                + " roles change.",
                        width)),
                table.head(List.of("From", "Drill", "For", "Leads first", "Works on")),
                rows);
        flow.add(Piece.space(type.size()));
        flow.add(type.paragraph(Role.PARAGRAPH, Face.BOLD, "What we agreed", width));
        for (int line = 0; line < TwoSession.LINES; line++) {
            flow.add(rule(width, 2.6 * type.size()));
        }
        flow.add(Piece.space(type.size()));
        flow.add(type.paragraph(Role.PARAGRAPH, Face.BOLD, LessonSheet.DEFERRAL, width));
        return flow.pages();
    }

    private static Piece rule(double width, double height) {
        return new Piece(height, List.of(new Mark.Line(0, height, width, height, 0.5, Ink.BLACK)), List.of(), true);
    }
}
