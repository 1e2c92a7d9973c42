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
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.Sides;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.SetText;
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
    private final Box foot;
    private final double room;
    private final Box header;
    private final Box heads;
    private final List<Box> counts;
    private final Box closing;
    private final Box behind;

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

    Box foot() {
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
                        () -> 0)
                .share(counts.stream().map(Box::height).toList());
    }

    private double sum(int from, int to) {
        return Box.height(counts.subList(from, to));
    }

    /** What stands between the running head and the foot of each page. */
    List<Box> bodies(String anchor) {
        List<Integer> shares = shares().orElseThrow();
        List<Box> bodies = new ArrayList<>();
        int from = 0;
        for (int page = 0; page < shares.size(); page++) {
            int to = from + shares.get(page);
            boolean last = page == shares.size() - 1;
            Box above = page == 0 ? Box.stack(anchor(anchor), header) : continued(from, to);
            Box below = last ? Box.stack(closing, behind) : Box.NONE;
            Box body = body(above, from, to, below);
            bodies.add(isAgainstTheBook() ? mirrored(body) : body);
            from = to;
        }
        return bodies;
    }

    /** The pages of a book are mirrored as a whole, as its language is read. */
    private boolean isAgainstTheBook() {
        return text.rightToLeft() != Direction.of(labels.language().locale()).isRightToLeft();
    }

    private Box mirrored(Box box) {
        return new Mirrored(press.grid().width(), press.faces()).box(box);
    }

    private Box body(Box above, int from, int to, Box below) {
        double needed = above.height() + heads.height() + below.height() + sum(from, to);
        Box table = new CountTable(press).set(heads, counts.subList(from, to), room - needed);
        return Box.stack(above, table, below);
    }

    private Box anchor(String name) {
        Grid grid = press.grid();
        return Box.of(0, new Node.Anchor(name, grid.left(), 0));
    }

    private Box header() {
        Grid grid = press.grid();
        SetText title = press.title().balanced(text.title(), grid.axis(), 0, grid.besideNumbers());
        List<Paragraph> before = new ArrayList<>(words.purpose());
        before.addAll(text.before());
        return Box.stack(
                Box.of(Role.TITLE, title),
                press.paragraph(words.about(), grid.axis()),
                press.space(0.35),
                press.list(before, grid.axis()),
                press.space(0.35));
    }

    private Box continued(int from, int to) {
        String said = from == to
                ? labels.text(Label.CONTINUED_CLOSING)
                : to - from == 1
                        ? labels.text(Label.CONTINUED_COUNT, numeral(from))
                        : labels.text(Label.CONTINUED_COUNTS, numeral(from), numeral(to - 1));
        Paragraph both = words.title().followedBy(new Styled("· " + said, Face.REGULAR));
        return Box.stack(press.paragraph(both, press.grid().axis()), press.space(0.35));
    }

    private String numeral(int count) {
        return text.counts().get(count).numeral();
    }

    /** What a card has no room for: the note, and under a heavy rule which drills come before and behind. */
    private Box behind() {
        Grid grid = press.grid();
        List<Box> behind = new ArrayList<>();
        if (!words.note().isEmpty()) {
            SetText note = press.type(paper.notes()).set(words.note(), grid.axis(), 0, grid.besideNumbers());
            behind.add(press.space(0.35));
            behind.add(Box.of(Role.PARAGRAPH, note));
        }
        if (!words.related().isEmpty()) {
            behind.add(press.space(0.5));
            behind.add(press.rule(LineWeight.HEAVY));
            behind.add(press.space(0.4));
            behind.add(press.list(words.related(), grid.axis()));
        }
        return Box.stack(behind);
    }
}
