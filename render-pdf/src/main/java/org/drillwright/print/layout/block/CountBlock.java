package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Paragraph;

/**
 * One count, set like a play: its number, then each speaker on lines of his own behind his sign, then safety; beside
 * them the picture with the distance under it.
 */
public final class CountBlock {

    /** Above and below the words, as a share of the small leading. */
    private static final double PAD = 0.2;

    private final CardText.Count count;
    private final CardText.Heads heads;
    private final Press press;
    private final Grid grid;

    public CountBlock(CardText.Count count, CardText.Heads heads, Press press) {
        this.count = count;
        this.heads = heads;
        this.press = press;
        this.grid = press.grid();
    }

    public Box set() {
        double pad = PAD * press.small().leading();
        SetText call = words(count.call(), press.turns(), pad);
        double y = pad + call.height();
        SetText leader = words(count.leader(), press.turns(), y);
        List<Mark> black = Sign.leader(hanging(press.turns(), y), press.turns().size());
        y += leader.height();
        SetText follower = words(count.follower(), press.turns(), y);
        List<Mark> white =
                Sign.follower(hanging(press.turns(), y), press.turns().size());
        y += follower.height();
        SetText safety = words(count.safety(), press.small(), y);
        List<Mark> triangle = Sign.safety(hanging(press.small(), y), press.scale());
        y += safety.height();

        Optional<Node.Figure> picture = count.picture().map(drawn -> drawn.draw(grid.pictures(), pad, grid.picture()));
        double under = picture.map(figure -> figure.box().bottom()).orElse(pad);
        SetText distance = DistanceWord.set(count, picture, under, press);

        Mark.Text numeral = numeral(pad);
        List<Node> cue = new ArrayList<>(paragraph(distance));
        if (!count.safety().isEmpty()) {
            cue.add(new Node.Sign(heads.safety() + ":", triangle));
            cue.addAll(paragraph(safety));
        }
        picture.ifPresent(cue::add);
        Node row = new Node.Group(
                Role.ROW,
                List.of(
                        new Node.Words(Role.ROW_HEAD, head(numeral, call)),
                        said(heads.leader(), black, leader),
                        said(heads.follower(), white, follower),
                        new Node.Group(Role.CELL, cue)));
        double height = Math.max(Math.max(y, numeral.baseline()), under + distance.height()) + pad;
        return Box.of(height, row).breaking(call, leader, follower, distance, safety);
    }

    private SetText words(Paragraph words, Type type, double top) {
        return type.balanced(words, grid.words(), top, grid.wordsWidth());
    }

    private Sign.Place hanging(Type type, double top) {
        return Sign.Place.before(type, grid.axis(), top);
    }

    /** Its top level with that of the first capital. */
    private Mark.Text numeral(double top) {
        double capitals = press.faces().of(Face.BOLD).capHeight();
        double first = press.turns().baseline(top);
        double baseline =
                first + capitals * (press.scale().number() - press.turns().size());
        return new Mark.Text(grid.left(), baseline, press.scale().number(), Face.BOLD, count.numeral(), Ink.BLACK);
    }

    private static List<Mark.Text> head(Mark.Text numeral, SetText call) {
        return Stream.concat(Stream.of(numeral), call.lines().stream()).toList();
    }

    private static Node said(String role, List<Mark> sign, SetText words) {
        return new Node.Group(
                Role.CELL,
                Stream.concat(Stream.of(new Node.Sign(role + ":", sign)), paragraph(words).stream())
                        .toList());
    }

    private static List<Node> paragraph(SetText words) {
        return words.lines().isEmpty() ? List.of() : List.of(words.as(Role.PARAGRAPH));
    }
}
