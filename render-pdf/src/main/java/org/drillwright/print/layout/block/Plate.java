package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.CardArea;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;

/** Sets cards that are not counts in columns: backs, and the safety card. */
public record Plate(CardArea area, Scale scale, Typefaces faces) {

    /** Backs are punched in the other corner: turned over, the front's left edge is the back's right one. */
    private double titleWidth() {
        return area.inner() - CardArea.HOLE - 0.5 * scale.cue();
    }

    public Paragraph words(Face face, String text) {
        return Paragraph.of(faces, face, text);
    }

    public Paragraph labelled(String label, String text) {
        return Paragraph.of(faces, List.of(new Styled(label, Face.BOLD), new Styled(text, Face.REGULAR)));
    }

    /** A title, clear of a ring hole in either corner at the top, over a rule. */
    public Slab title(String text, Optional<String> ofSeveral) {
        String whole = text + ofSeveral.map(part -> "\u00A0· " + part).orElse("");
        double left = area.left() + (area.inner() - titleWidth()) / 2;
        double x = Math.max(left, area.besideHole());
        double width = area.width() - 2 * x;
        Setting set = setting(words(Face.BOLD, whole), 1.2 * scale.cue(), x, 0, width);
        double height = Math.max(set.height(), CardArea.HOLE) + 0.5 * scale.cue();
        Mark rule = new Mark.Line(area.left(), height, area.right(), height, 1, Ink.BLACK);
        return new Slab(
                height + 0.3 * scale.cue(),
                List.of(rule),
                List.of(new Node.Words(Role.TITLE, set.lines())),
                set.broken());
    }

    /** A head within a card, white on a black band. */
    public Slab head(String text) {
        double size = scale.cue();
        double pad = 0.2 * size;
        Setting set = Setting.of(
                faces,
                words(Face.BOLD, text),
                size,
                new Setting.Column(area.left() + 2 * pad, 2 * pad, area.inner() - 4 * pad),
                Ink.WHITE);
        double height = set.height() + 2 * pad;
        Mark band = Mark.Shape.filled(
                Outline.polygon(
                        area.left(), pad, area.right(), pad, area.right(), pad + height, area.left(), pad + height),
                Ink.BLACK);
        return new Slab(
                height + 3 * pad, List.of(band), List.of(new Node.Words(Role.PARAGRAPH, set.lines())), set.broken());
    }

    public Slab paragraph(Paragraph words, double size) {
        if (words.isEmpty()) {
            return Slab.NONE;
        }
        Setting set = setting(words, size, area.left(), 0, area.inner());
        return new Slab(
                set.height() + 0.3 * size,
                List.of(),
                List.of(new Node.Words(Role.PARAGRAPH, set.lines())),
                set.broken());
    }

    /** A paragraph behind a square. */
    public Slab item(String text) {
        double size = scale.cue();
        double indent = 0.9 * size;
        double square = 0.38 * size;
        Setting set = setting(words(Face.REGULAR, text), size, area.left() + indent, 0, area.inner() - indent);
        double top = faces.of(Face.REGULAR).ascent() * size - 0.56 * size;
        Mark mark = Mark.Shape.filled(
                Outline.polygon(
                        area.left(),
                        top,
                        area.left() + square,
                        top,
                        area.left() + square,
                        top + square,
                        area.left(),
                        top + square),
                Ink.BLACK);
        return new Slab(
                set.height() + 0.28 * size,
                List.of(mark),
                List.of(new Node.Words(Role.PARAGRAPH, set.lines())),
                set.broken());
    }

    public Setting setting(Paragraph words, double size, double x, double top, double width) {
        return Setting.of(faces, words, size, new Setting.Column(x, top, width));
    }

    public double room() {
        return area.bottom() - area.top();
    }

    /** A card of slabs one under the other, spare room between them; nothing if they do not fit or break a word. */
    public Optional<Frame> card(List<Slab> slabs) {
        double height = slabs.stream().mapToDouble(Slab::height).sum();
        if (height > room() || slabs.stream().anyMatch(slab -> !slab.broken().isEmpty())) {
            return Optional.empty();
        }
        double between = Math.min(0.5 * scale.cue(), (room() - height) / slabs.size());
        List<Slab> spaced = new ArrayList<>(slabs.stream()
                .flatMap(slab -> Stream.of(slab, Slab.space(between)))
                .toList());
        Slab all = Slab.stack(spaced).moved(area.top());
        return Optional.of(new Frame(
                area.width(),
                area.height(),
                CardArea.EDGE,
                all.backdrop(),
                List.of(new Node.Group(Role.CARD, all.content()))));
    }
}
