package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.ClosingBlock;
import org.drillwright.print.layout.block.CountBlock;
import org.drillwright.print.layout.block.CountTable;
import org.drillwright.print.layout.block.HeadsBlock;
import org.drillwright.print.layout.block.Mirrored;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.block.SetText;
import org.drillwright.print.layout.block.Slab;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.Sides;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.wording.Direction;

/**
 * A drill on a page of a booklet: on two that are seen at once if one does not hold it, on more only if it must be.
 * Counts are set as on its card.
 */
final class DrillPages {

    private final CardText text;
    private final DrillWords words;
    private final PageGrid paper;
    private final Press press;
    private final Labels labels;
    private final Slab foot;
    private final double room;
    private final Slab header;
    private final Slab heads;
    private final List<Slab> counts;
    private final Slab closing;
    private final Slab behind;

    private DrillPages(CardText text, DrillWords words, PageGrid paper, Press press, Labels labels) {
        this.text = text;
        this.words = words;
        this.paper = paper;
        this.press = press;
        this.labels = labels;
        this.foot =
                BookletPages.foot(press, labels, words.remarks(), text.foot().mark());
        this.room = BookletPages.room(press, foot);
        this.header = header();
        this.heads = new HeadsBlock(text.heads(), press).set();
        this.counts = text.counts().stream()
                .map(count -> new CountBlock(count, text.heads(), press).set())
                .toList();
        this.closing = new ClosingBlock(text, press).set();
        this.behind = behind();
    }

    /** With all pictures if so one page holds it, else without those in which nothing is aimed, else on more pages. */
    static DrillPages of(CardText text, DrillWords words, PageGrid paper, Labels labels) {
        Press press = Press.of(text, paper.grid(), words.faces());
        Function<CardText, DrillPages> laid = some -> new DrillPages(some, words, paper, press, labels);
        DrillPages whole = laid.apply(text);
        if (whole.isOnePage()) {
            return whole;
        }
        DrillPages fewer = laid.apply(text.withoutQuietPictures());
        return fewer.isOnePage() ? fewer : whole;
    }

    Slab foot() {
        return foot;
    }

    /** How many counts each page has; nothing if one part of the drill fits no page. */
    Optional<List<Integer>> shares() {
        int all = text.counts().size();
        if (isOnePage()) {
            return Optional.of(List.of(all));
        }
        int best = -1;
        double least = room;
        for (int first = 1; first <= all; first++) {
            double longer = Math.max(begun(first), ended(first));
            if (longer <= least) {
                best = first;
                least = longer;
            }
        }
        return best < 0 ? many() : Optional.of(List.of(best, all - best));
    }

    private boolean isOnePage() {
        int all = text.counts().size();
        return begun(all) + closing.height() + behind.height() <= room;
    }

    private double begun(int counts) {
        return header.height() + heads.height() + sum(0, counts);
    }

    private double ended(int from) {
        int all = text.counts().size();
        double table = from == all ? 0 : heads.height() + sum(from, all);
        return continued(from, all).height() + table + closing.height() + behind.height();
    }

    private Optional<List<Integer>> many() {
        double further = continued(0, 1).height();
        return new Sides(
                        side -> room - heads.height() - (side == 0 ? header.height() : further),
                        closing.height() + behind.height(),
                        0)
                .share(counts.stream().map(Slab::height).toList());
    }

    private double sum(int from, int to) {
        return counts.subList(from, to).stream().mapToDouble(Slab::height).sum();
    }

    /** What stands between the running head and the foot of each page. */
    List<Slab> bodies(String anchor) {
        List<Integer> shares = shares().orElseThrow();
        List<Slab> bodies = new ArrayList<>();
        int from = 0;
        for (int page = 0; page < shares.size(); page++) {
            int to = from + shares.get(page);
            boolean last = page == shares.size() - 1;
            Slab above = page == 0 ? Slab.stack(List.of(anchor(anchor), header)) : continued(from, to);
            Slab below = last ? Slab.stack(List.of(closing, behind)) : Slab.NONE;
            Slab body = body(above, from, to, below);
            bodies.add(isAgainstTheBook() ? mirrored(body) : body);
            from = to;
        }
        return bodies;
    }

    /** The pages of a book are mirrored as a whole, as its language is read. */
    private boolean isAgainstTheBook() {
        return text.rightToLeft() != Direction.of(labels.language().locale()).isRightToLeft();
    }

    private Slab mirrored(Slab slab) {
        return new Mirrored(press.grid().width(), press.faces()).slab(slab);
    }

    private Slab body(Slab above, int from, int to, Slab below) {
        double needed = above.height() + heads.height() + below.height() + sum(from, to);
        Slab table = new CountTable(press).set(heads, counts.subList(from, to), room - needed);
        return Slab.stack(List.of(above, table, below));
    }

    private Slab anchor(String name) {
        Grid grid = press.grid();
        return new Slab(0, List.of(), List.of(new Node.Anchor(name, grid.left(), 0)), List.of());
    }

    private Slab header() {
        Grid grid = press.grid();
        SetText title = press.balanced(text.title(), press.scale().title(), grid.axis(), 0, grid.besideNumbers());
        List<Paragraph> before = new ArrayList<>(words.purpose());
        before.addAll(text.before());
        return Slab.stack(List.of(
                Press.slab(Role.TITLE, title),
                press.paragraph(words.about(), grid.axis()),
                press.space(0.35),
                press.list(before, grid.axis()),
                press.space(0.35)));
    }

    private Slab continued(int from, int to) {
        String said = from == to
                ? labels.text(Label.CONTINUED_CLOSING)
                : to - from == 1
                        ? labels.text(Label.CONTINUED_COUNT, numeral(from))
                        : labels.text(Label.CONTINUED_COUNTS, numeral(from), numeral(to - 1));
        Paragraph both = words.title().followedBy(new Styled("· " + said, Face.REGULAR));
        return Slab.stack(List.of(press.paragraph(both, press.grid().axis()), press.space(0.35)));
    }

    private String numeral(int count) {
        return text.counts().get(count).numeral();
    }

    /** What a card has no room for: the note, and under a heavy rule which drills come before and behind. */
    private Slab behind() {
        Grid grid = press.grid();
        List<Slab> behind = new ArrayList<>();
        if (!words.note().isEmpty()) {
            SetText note = press.running(words.note(), paper.notes(), grid.axis(), 0, grid.besideNumbers());
            behind.add(press.space(0.35));
            behind.add(Press.slab(Role.PARAGRAPH, note));
        }
        if (!words.related().isEmpty()) {
            behind.add(press.space(0.5));
            behind.add(press.rule(Press.HEAVY));
            behind.add(press.space(0.4));
            behind.add(press.list(words.related(), grid.axis()));
        }
        return Slab.stack(behind);
    }
}
