package org.drillwright.print.layout.block;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.CardArea;
import org.drillwright.print.layout.fit.Columns;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.text.Paragraph;

/** The heads of the columns, white on a black band, with the sign of safety and its word under the turns. */
public final class HeadsBlock {

    private final CardText.Heads heads;
    private final Press press;
    private final double size;

    public HeadsBlock(CardText.Heads heads, Press press) {
        this.heads = heads;
        this.press = press;
        this.size = press.scale().head();
    }

    public Slab set() {
        Columns columns = press.columns();
        double pad = 0.25 * size;
        Setting count = head(heads.count(), columns.count(), pad);
        Setting leader = head(heads.leader(), columns.leader(), pad);
        Setting follower = head(heads.follower(), columns.follower(), pad);
        Setting distance = head(heads.distance(), columns.distance(), pad);
        double turns = Stream.of(count, leader, follower, distance)
                .mapToDouble(Setting::height)
                .max()
                .orElse(0);
        Sign sign = Sign.before(columns.leader().x(), pad + turns, size, Ink.WHITE, Ink.BLACK);
        Columns.Span under = columns.acrossTurns();
        Setting safety = head(
                heads.safety(), new Columns.Span(under.x() + sign.width(), under.width() - sign.width()), pad + turns);
        double height = turns + safety.height() + 2 * pad;
        CardArea area = press.area();
        Mark band = Mark.Shape.filled(Outline.box(new Box(area.left(), 0, area.inner(), height)), Ink.BLACK);
        List<Setting> all = List.of(count, leader, follower, distance, safety);
        Node row = new Node.Group(
                Role.ROW,
                all.stream()
                        .map(set -> (Node) new Node.Words(Role.COLUMN_HEAD, set.lines()))
                        .toList());
        List<String> broken = all.stream().flatMap(set -> set.broken().stream()).toList();
        return new Slab(height, List.of(), List.of(row), broken)
                .on(Stream.concat(Stream.of(band), sign.marks().stream()).toList());
    }

    private Setting head(Paragraph words, Columns.Span span, double top) {
        return Setting.of(press.faces(), words, size, new Setting.Column(span.x(), top, span.width()), Ink.WHITE);
    }
}
