package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.partner.TwoSession;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;
import org.drillwright.report.plan.Clock;
import org.drillwright.report.plan.SessionText;

/** A sheet for two who train without a teacher, with room to write what they agree on. */
public final class SessionSheet {

    /** By hand one writes in rows so high. */
    private static final double ROW = Millimetres.toPoints(11);

    private static final double TIME = Millimetres.toPoints(18);
    private static final double LEADS = Millimetres.toPoints(30);
    private static final double LENGTH = Millimetres.toPoints(17);
    private static final double AGREED = Millimetres.toPoints(44);
    private static final double PAD = 3;

    private final HandWords words;
    private final HandType type;
    private final double width;

    private SessionSheet(HandWords words, HandType type, double width) {
        this.words = words;
        this.type = type;
        this.width = width;
    }

    public static List<Frame> pages(
            TwoSession session,
            Naming names,
            School school,
            Map<String, Drill> drills,
            SheetSize size,
            Typefaces faces) {
        HandWords words = HandWords.in(school.language());
        HandType type = new HandType(faces);
        Sheet paper = Sheet.upright(size, Sheet.HELD);
        SessionSheet sheet = new SessionSheet(words, type, paper.inner());
        String document = Foot.line(school.name(), words.text(HandWord.NOT_STORED));
        Flow flow = new Flow(paper, 1, Foot.of(type.foot(), paper, words.text(HandWord.DEFERRAL), document));
        flow.add(type.heading()
                .title(words.text(HandWord.TWO, names.of(session.one()), names.of(session.other())), paper.inner()));
        flow.add(type.notes().paragraph(sheet.head(session, school, drills), paper.inner()));
        flow.table(sheet.heads(), sheet.rows(session, names, drills));
        return Mirrored.pages(flow.pages(), school.language().locale(), faces);
    }

    private List<Styled> head(TwoSession session, School school, Map<String, Drill> drills) {
        List<Styled> said = new ArrayList<>();
        String gear = String.join(
                "\u00A0\u00B7 ",
                session.blocks().stream()
                        .flatMap(block -> Optional.ofNullable(drills.get(block.drill())).stream())
                        .flatMap(drill -> school.gearOf(drill).stream())
                        .distinct()
                        .toList());
        if (!gear.isEmpty()) {
            said.add(new Styled(words.labels().text(Label.GEAR), Face.BOLD));
            said.add(new Styled(gear, Face.REGULAR));
        }
        said.add(new Styled(words.text(HandWord.HALT), Face.BOLD));
        said.add(new Styled(words.text(HandWord.HALT_SAID), Face.REGULAR));
        said.add(new Styled(words.text(HandWord.HALF), Face.REGULAR));
        said.add(new Styled(chosen(session), Face.REGULAR));
        return said;
    }

    private String chosen(TwoSession session) {
        if (session.shared() == 0) {
            return words.text(HandWord.NO_SHARED);
        }
        int chosen = session.blocks().size();
        return chosen == 0 ? words.text(HandWord.NO_TIME) : words.text(HandWord.CHOSEN, chosen, session.shared());
    }

    private double[] columns() {
        return new double[] {TIME, width - TIME - LEADS - LENGTH - AGREED, LEADS, LENGTH, AGREED};
    }

    private Box heads() {
        Box heads = row(
                List.of(
                        words.text(HandWord.FROM),
                        words.labels().text(Label.DRILL),
                        words.text(HandWord.LEADS_FIRST),
                        words.text(HandWord.FOR),
                        words.text(HandWord.AGREED)),
                List.of(),
                0,
                true);
        return heads.on(LineWeight.HEAVY.across(0, width, heads.height()));
    }

    private List<Box> rows(TwoSession session, Naming names, Map<String, Drill> drills) {
        List<Box> rows = new ArrayList<>();
        rows.add(ruled(List.of("0:00", words.text(HandWord.OPENING_WARM), "", "", ""), List.of()));
        for (TwoSession.Block block : session.blocks()) {
            rows.add(ruled(
                    List.of(
                            Clock.of(block.start()),
                            SessionText.title(block.drill(), drills),
                            names.of(block.leadsFirst()),
                            words.text(HandWord.MINUTES, block.length().toMinutes()),
                            ""),
                    block.worksOn()));
        }
        rows.add(ruled(List.of(words.text(HandWord.LAST), words.text(HandWord.CLOSING_SALUTE), "", "", ""), List.of()));
        return rows;
    }

    private Box ruled(List<String> cells, List<String> worksOn) {
        Box row = row(cells, worksOn, ROW, false);
        return row.on(
                LineWeight.THIN.across(0, width, row.height()), LineWeight.THIN.down(width - AGREED, 0, row.height()));
    }

    /** A row at least so high, what the drill works on under its title. */
    private Box row(List<String> cells, List<String> worksOn, double least, boolean head) {
        double[] columns = columns();
        List<Node> nodes = new ArrayList<>();
        double height = least;
        double x = 0;
        for (int at = 0; at < cells.size(); at++) {
            double room = columns[at] - PAD;
            Face face = head || at == 0 ? Face.BOLD : Face.REGULAR;
            SetText set =
                    (head ? type.notes() : type.words()).set(face, cells.get(at), x + (at == 4 ? PAD : 0), PAD, room);
            List<Mark.Text> lines = set.lines();
            double end = PAD + set.height();
            if (at == 1 && !worksOn.isEmpty()) {
                SetText works = type.notes()
                        .set(
                                Face.REGULAR,
                                words.labels().text(Label.WORKS_ON_SAID, String.join(", ", worksOn)),
                                x,
                                end,
                                room);
                lines = Stream.concat(lines.stream(), works.lines().stream()).toList();
                end += works.height();
            }
            nodes.add(new Node.Words(head ? Role.COLUMN_HEAD : at == 0 ? Role.ROW_HEAD : Role.CELL, lines));
            height = Math.max(height, end + PAD);
            x += columns[at];
        }
        return Box.of(height, new Node.Group(Role.ROW, nodes));
    }
}
