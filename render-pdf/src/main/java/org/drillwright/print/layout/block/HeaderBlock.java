package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.CardArea;
import org.drillwright.print.layout.words.CardText;

/** The head of a card: beside the ring hole the title; under it level, weapon and form, and marks at the edge. */
public final class HeaderBlock {

    /** Light enough to be seen only by who looks for where to punch. */
    private static final Ink HOLE = new Ink(0.72);

    private final CardText text;
    private final Press press;
    private final double size;

    public HeaderBlock(CardText text, Press press) {
        this.text = text;
        this.press = press;
        this.size = press.scale().cue();
    }

    /** With a mark such as '1 of 2' where a drill has several cards. */
    public Slab set(Optional<String> ofSeveral) {
        CardArea area = press.area();
        double x = area.besideHole();
        Setting title = press.set(text.title(), press.scale().title(), x, 0, area.right() - x);
        List<Mark> backdrop = new ArrayList<>();
        if (area.ringed()) {
            backdrop.add(hole());
        }
        List<Mark.Text> tags = new ArrayList<>();
        double edge = area.right();
        for (Tag tag : Stream.concat(
                        ofSeveral.map(words -> new Tag(words, false)).stream(),
                        text.draft().map(words -> new Tag(words, true)).stream())
                .toList()) {
            edge = tag(tag, edge, title.height(), backdrop, tags);
        }
        Setting about = press.set(text.about(), size, x, title.height() + pad(), edge - x);
        List<Node> content = new ArrayList<>();
        content.add(new Node.Words(Role.TITLE, title.lines()));
        tags.forEach(tag -> content.add(new Node.Words(Role.PARAGRAPH, List.of(tag))));
        content.add(new Node.Words(Role.PARAGRAPH, about.lines()));
        double height = title.height() + Math.max(about.height(), Setting.LEADING * size) + 3 * pad();
        List<String> broken =
                Stream.of(title, about).flatMap(set -> set.broken().stream()).toList();
        return new Slab(Math.max(height, area.hole().height() + pad()), backdrop, content, broken);
    }

    private record Tag(String words, boolean loud) {}

    private double pad() {
        return 0.18 * size;
    }

    private Mark hole() {
        Box hole = press.area().hole();
        double radius = hole.width() / 2;
        return Mark.Shape.stroked(Outline.circle(hole.x() + radius, radius, radius - 0.5), 0.5, HOLE);
    }

    /** Sets a tag at an edge and answers where what is left of it must end. */
    private double tag(Tag tag, double edge, double top, List<Mark> backdrop, List<Mark.Text> tags) {
        double inside = 0.35 * size;
        double width = press.faces().of(Face.BOLD).width(tag.words()) * size + 2 * inside;
        Box box = new Box(edge - width, top, width, Setting.LEADING * size + 2 * pad());
        backdrop.add(
                tag.loud()
                        ? Mark.Shape.filled(Outline.box(box), Ink.BLACK)
                        : Mark.Shape.stroked(Outline.box(box), 0.75, Ink.BLACK));
        double baseline = top + pad() + press.faces().of(Face.BOLD).ascent() * size;
        Ink ink = tag.loud() ? Ink.WHITE : Ink.BLACK;
        tags.add(new Mark.Text(box.x() + inside, baseline, size, Face.BOLD, tag.words(), ink));
        return box.x() - inside;
    }
}
