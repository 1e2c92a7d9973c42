package org.drillwright.print.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.CountBlock;
import org.drillwright.print.layout.block.CountTable;
import org.drillwright.print.layout.block.DraftMark;
import org.drillwright.print.layout.block.HeaderBlock;
import org.drillwright.print.layout.block.HeadsBlock;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.block.Slab;
import org.drillwright.print.layout.block.StripBlock;
import org.drillwright.print.layout.fit.CardArea;
import org.drillwright.print.layout.fit.Pagination;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.Typefaces;

/** The pieces of a drill set at one scale, shared out on as many cards as they need. */
final class Composition {

    /** Height grows with this power of the type size: 1 for single lines, 2 for long paragraphs; found by trial. */
    private static final double GROWS_BY = 1.7;

    private final CardText text;
    private final Press press;
    private final Labels labels;
    private final Slab aloneHeader;
    private final Slab severalHeader;
    private final Slab before;
    private final Slab heads;
    private final List<Slab> counts;
    private final Slab after;
    private final Slab foot;

    Composition(CardText text, CardArea area, Scale scale, Labels labels, Typefaces faces) {
        this.text = text;
        this.press = Press.of(text, area, scale, faces);
        this.labels = labels;
        this.aloneHeader = header(1, 1);
        // One of nine stands for any of several: digits are all of one width.
        this.severalHeader = header(9, 9);
        double between = 0.25 * scale.cue();
        this.before = Slab.stack(List.of(
                new StripBlock(press).set(text.gear()),
                press.paragraphs(text.before(), scale.cue(), between),
                Slab.space(2 * between)));
        this.heads = new HeadsBlock(text.heads(), press).set();
        this.counts = text.counts().stream()
                .map(count -> new CountBlock(count, press).set())
                .toList();
        this.after = Slab.stack(List.of(
                Slab.space(between),
                press.paragraphs(text.after(), scale.cue(), between),
                press.rule(2 * between + scale.foot(), 0.5)));
        this.foot = Slab.stack(List.of(Slab.space(0.3 * scale.foot()), press.paragraphs(text.foot(), scale.foot(), 0)));
    }

    /** How many counts go on each card, or nothing if one part fits no card. */
    Optional<List<Integer>> shares() {
        int most = 9;
        Optional<List<Integer>> shares = shares(severalHeader);
        // The mark '10 of 12' is wider than '1 of 2' and may push the words beside it on to one more line.
        while (shares.isPresent() && shares.get().size() > most) {
            most = 10 * most + 9;
            shares = shares(header(most, most));
        }
        return shares;
    }

    private Optional<List<Integer>> shares(Slab header) {
        CardArea area = press.area();
        double room = area.bottom() - area.top() - heads.height() - foot.height();
        double several = room - header.height();
        Pagination pagination = new Pagination(
                room - aloneHeader.height() - before.height() - after.height(),
                several - before.height(),
                several,
                several - after.height());
        return pagination.share(counts.stream().map(Slab::height).toList());
    }

    boolean hasPictures() {
        return text.hasPictures();
    }

    /** By how much the type would have to grow to fill so many cards, roughly: a line takes more lines as it grows. */
    double growth(int cards) {
        double once = heads.height() + foot.height();
        double all = before.height() + after.height();
        for (Slab count : counts) {
            all += count.height();
        }
        double needed = all + cards * (once + (cards == 1 ? aloneHeader : severalHeader).height());
        return Math.pow(cards * (press.area().bottom() - press.area().top()) / needed, 1 / GROWS_BY);
    }

    List<String> broken() {
        return Stream.concat(Stream.of(severalHeader, before, heads, after, foot), counts.stream())
                .flatMap(slab -> slab.broken().stream())
                .distinct()
                .toList();
    }

    List<Frame> cards(List<Integer> shares) {
        List<Frame> cards = new ArrayList<>();
        int start = 0;
        for (int card = 1; card <= shares.size(); card++) {
            int end = start + shares.get(card - 1);
            cards.add(card(card, shares.size(), counts.subList(start, end)));
            start = end;
        }
        return cards;
    }

    private Slab header(int card, int cards) {
        return new HeaderBlock(text, press)
                .set(cards == 1 ? Optional.empty() : Optional.of(labels.text(Label.ONE_OF, card, cards)));
    }

    private Frame card(int card, int cards, List<Slab> on) {
        CardArea area = press.area();
        Slab header = header(card, cards);
        Slab front = card == 1 ? before : Slab.space(0.25 * press.scale().cue());
        Slab back = card == cards ? after : Slab.NONE;
        double used = header.height() + front.height() + back.height() + foot.height();
        double room = area.bottom() - area.top() - used;
        Slab table = new CountTable(press).set(heads, on, room);
        Slab body = Slab.stack(List.of(header, front, table, back)).moved(area.top());
        Slab end = foot.moved(area.bottom() - foot.height());
        List<Mark> backdrop = new ArrayList<>();
        text.draft().ifPresent(word -> backdrop.add(DraftMark.across(area, word, press.faces())));
        backdrop.addAll(body.backdrop());
        backdrop.addAll(end.backdrop());
        List<Node> content =
                Stream.concat(body.content().stream(), end.content().stream()).toList();
        return new Frame(
                area.width(), area.height(), CardArea.EDGE, backdrop, List.of(new Node.Group(Role.CARD, content)));
    }
}
