package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.Drill;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.progress.Progress;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Person;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Legibility;
import org.drillwright.print.text.Typefaces;

/** A table of drills by people for the hand; people who don't fit side by side follow on further pages. */
public final class ProgressSheet {

    private static final String KNOWN = "\u25CF";
    private static final String NEXT = "\u25CB";

    private final Progress progress;
    private final Naming names;
    private final Type type;

    private ProgressSheet(Progress progress, Naming names, Typefaces faces) {
        this.progress = progress;
        this.names = names;
        this.type = Type.ofCapitals(faces, Legibility.inTheHand());
    }

    public static List<Frame> pages(Progress progress, Naming names, SheetSize size, String school, Typefaces faces) {
        ProgressSheet sheet = new ProgressSheet(progress, names, faces);
        Paper paper = Paper.lying(size);
        Flow flow = new Flow(paper, Feet.of(sheet.type, paper, school));
        flow.add(sheet.type.times(1.6).paragraph(Role.TITLE, Face.BOLD, "Who knows which drill", flow.width()));
        flow.add(sheet.type.paragraph(
                Role.PARAGRAPH,
                Face.REGULAR,
                KNOWN + " known; " + NEXT + " next, as all that it needs is known",
                flow.width()));
        double first = sheet.drillWidth(flow.width());
        int abreast = Math.max(1, (int) ((flow.width() - first) / sheet.personWidth()));
        List<Person> people = progress.people();
        for (int from = 0; from < Math.max(1, people.size()); from += abreast) {
            List<Person> some = people.subList(from, Math.min(people.size(), from + abreast));
            flow.table(List.of(), sheet.head(some, first), sheet.rows(some, first));
            flow.add(Piece.space(sheet.type.size()));
        }
        return flow.pages();
    }

    private double personWidth() {
        return 1.9 * type.size();
    }

    private double drillWidth(double whole) {
        double widest = progress.drills().stream()
                .mapToDouble(drill -> type.width(Face.BOLD, drill.title()))
                .max()
                .orElse(0);
        return Math.min(widest + type.size(), 0.4 * whole);
    }

    /** Names stand upright, reading from below. */
    private Piece head(List<Person> people, double first) {
        double height = people.stream()
                        .mapToDouble(person -> type.width(Face.BOLD, names.of(person.name())))
                        .max()
                        .orElse(0)
                + type.size();
        List<Node> cells = new ArrayList<>();
        cells.add(new Node.Words(
                Role.COLUMN_HEAD,
                type.set(Face.BOLD, "Drill", 0.25 * type.size(), height - 1.5 * type.size(), first)
                        .lines()));
        for (int at = 0; at < people.size(); at++) {
            double x = first + (at + 0.5) * personWidth() + 0.36 * type.size();
            cells.add(new Node.Words(
                    Role.COLUMN_HEAD,
                    List.of(new Mark.Text(
                            x,
                            height - 0.5 * type.size(),
                            type.size(),
                            Face.BOLD,
                            names.of(people.get(at).name()),
                            Ink.BLACK,
                            90))));
        }
        return new Piece(height, List.of(), List.of(new Node.Group(Role.ROW, cells)), true);
    }

    private List<Piece> rows(List<Person> people, double first) {
        List<Piece> rows = new ArrayList<>();
        for (Drill drill : progress.drills()) {
            rows.add(row(drill, people, first, rows.size() % 2 == 0));
        }
        return rows;
    }

    private Piece row(Drill drill, List<Person> people, double first, boolean band) {
        double pad = 0.2 * type.size();
        List<Node> cells = new ArrayList<>();
        var title = type.set(Face.REGULAR, drill.title(), pad, pad, first - 2 * pad);
        cells.add(new Node.Words(Role.ROW_HEAD, title.lines()));
        for (int at = 0; at < people.size(); at++) {
            String sign = switch (progress.standing(people.get(at).name(), drill)) {
                case KNOWN -> KNOWN;
                case NEXT -> NEXT;
                case LATER -> "";
            };
            double x = first + (at + 0.5) * personWidth() - type.width(Face.REGULAR, sign) / 2;
            cells.add(new Node.Words(
                    Role.CELL,
                    type.set(Face.REGULAR, sign, x, pad, personWidth()).lines()));
        }
        double height = title.height() + 2 * pad;
        Box box = new Box(0, 0, first + people.size() * personWidth(), height);
        return new Piece(
                height,
                band ? List.of(Mark.Shape.filled(Outline.box(box), Type.BAND)) : List.of(),
                List.of(new Node.Group(Role.ROW, cells)),
                true);
    }
}
