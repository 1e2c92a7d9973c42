package org.drillwright.print.layout;

import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.block.ClosingBlock;
import org.drillwright.print.layout.block.CountBlock;
import org.drillwright.print.layout.block.CountTable;
import org.drillwright.print.layout.block.FootBlock;
import org.drillwright.print.layout.block.HeaderBlock;
import org.drillwright.print.layout.block.HeadsBlock;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.Sides;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Box;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;
import org.drillwright.wording.Message;

/**
 * The pieces of a drill set on one grid, shared out on the sides of as many cards as they need. Sheets for the wall have
 * no backs: what goes over goes to a sheet that hangs below.
 */
final class Composition {

    private final CardText text;
    private final Press press;
    private final Labels labels;
    private final HeaderBlock header;
    private final Box heads;
    private final List<Box> counts;
    private final Box closing;
    private final Box foot;
    private final Optional<List<Integer>> shares;

    /** The height of the line that sends the reader on, measured when a side is full. */
    private OptionalDouble over = OptionalDouble.empty();

    Composition(CardText text, Grid grid, Labels labels, Typefaces faces) {
        this.text = text;
        this.press = Press.of(text, grid, faces);
        this.labels = labels;
        this.header = new HeaderBlock(text, press);
        this.heads = new HeadsBlock(text.heads(), press).set();
        this.counts = text.counts().stream()
                .map(count -> new CountBlock(count, text.heads(), press).set())
                .toList();
        this.closing = new ClosingBlock(text, press).set();
        this.foot = new FootBlock(foot(), press).set();
        this.shares = shares();
    }

    /** The same with other counts, those of them set anew that are others. */
    private Composition(Composition before, CardText text) {
        this.text = text;
        this.press = before.press;
        this.labels = before.labels;
        this.header = before.header;
        this.heads = before.heads;
        this.counts = IntStream.range(0, text.counts().size())
                .mapToObj(
                        at -> text.counts().get(at).equals(before.text.counts().get(at))
                                ? before.counts.get(at)
                                : new CountBlock(text.counts().get(at), text.heads(), press).set())
                .toList();
        this.closing = before.closing;
        this.foot = before.foot;
        this.over = before.over;
        this.shares = shares();
    }

    /** Without the pictures in which nothing is aimed. */
    Composition withoutQuietPictures() {
        return new Composition(this, text.withoutQuietPictures());
    }

    private Optional<List<Integer>> shares() {
        Optional<List<Integer>> single = share(Optional.empty());
        // One of two stands for any of several: digits are all of one width, and more cards are rare.
        return single.filter(sides -> cards(sides.size()) > 1).isPresent() ? share(ofSeveral(2, 2)) : single;
    }

    /** A sheet for the wall also says from how far it is read. */
    private CardText.Foot foot() {
        CardText.Foot foot = text.foot();
        OptionalDouble metres = press.scale().readableFrom();
        if (isRinged() || metres.isEmpty()) {
            return foot;
        }
        NumberFormat number = NumberFormat.getInstance(labels.language().locale());
        String words = "· " + labels.text(Label.READABLE, number.format(metres.getAsDouble()));
        return new CardText.Foot(foot.caution(), foot.line().followedBy(new Styled(words, Face.REGULAR)), foot.mark());
    }

    /** How many counts go on each side; nothing if one part fits no side. */
    private Optional<List<Integer>> share(Optional<String> ofSeveral) {
        double once = heads.height() + foot.height();
        return new Sides(side -> press.room() - once - header(side, ofSeveral), closing.height(), this::over)
                .share(counts.stream().map(Box::height).toList());
    }

    private double over() {
        if (over.isEmpty()) {
            over = OptionalDouble.of(highest(from ->
                    Math.max(over(from, false).height(), over(from, true).height())));
        }
        return over.getAsDouble();
    }

    /** The highest of what may have to be said of the counts from one on: of all, of the last two, of the last, of none. */
    private double highest(IntToDoubleFunction height) {
        int all = counts.size();
        return IntStream.of(0, all - 2, all - 1, all)
                .filter(from -> from >= 0)
                .mapToDouble(height)
                .max()
                .orElse(0);
    }

    /** Where the counts of a further side begin and end is not known yet. */
    private double header(int side, Optional<String> ofSeveral) {
        return side == 0
                ? header.first(ofSeveral).height()
                : highest(from -> header(side, from, counts.size(), ofSeveral).height());
    }

    boolean isWhole() {
        return shares.isPresent();
    }

    /** Whether all of the drill is seen at once. */
    boolean isOneSide() {
        return shares.filter(sides -> sides.size() == 1).isPresent();
    }

    /** How many cards, or sheets for the wall, it takes; none if it is not whole. */
    int cards() {
        return shares.map(sides -> cards(sides.size())).orElse(0);
    }

    private int cards(int sides) {
        return isRinged() ? (sides + 1) / 2 : sides;
    }

    private boolean isRinged() {
        return press.grid().isRinged();
    }

    List<String> broken() {
        return Stream.concat(Stream.of(header.first(Optional.empty()), heads, closing, foot), counts.stream())
                .flatMap(box -> box.broken().stream())
                .distinct()
                .toList();
    }

    /** The sides of the cards; the backs of the last may be missing. */
    List<CardSides> cards(Optional<Frame> lastBack) {
        List<Frame> sides = sides(shares.orElseThrow());
        List<CardSides> cards = new ArrayList<>();
        for (int at = 0; at < sides.size(); at += isRinged() ? 2 : 1) {
            boolean own = isRinged() && at + 1 < sides.size();
            cards.add(new CardSides(sides.get(at), own ? Optional.of(sides.get(at + 1)) : lastBack));
        }
        return cards;
    }

    private List<Frame> sides(List<Integer> shared) {
        List<Frame> sides = new ArrayList<>();
        int cards = cards(shared.size());
        int start = 0;
        for (int side = 0; side < shared.size(); side++) {
            int end = start + shared.get(side);
            boolean last = side == shared.size() - 1;
            Optional<String> ofSeveral = cards > 1 && isRinged() ? ofSeveral(side / 2 + 1, cards) : Optional.empty();
            Box top = header(side, start, end, ofSeveral);
            Box end0 = last ? closing : over(end, isBack(side));
            sides.add(side(top, counts.subList(start, end), end0, last && isBack(side), isBack(side)));
            start = end;
        }
        return sides;
    }

    private Frame side(Box top, List<Box> on, Box behind, boolean aims, boolean back) {
        double needed = top.height() + heads.height() + behind.height() + foot.height();
        double spare = press.room() - needed - Box.height(on);
        Box table = new CountTable(press).set(heads, on, spare);
        Box body = Box.stack(top, table, behind);
        Box more =
                Box.stack(press.space(0.6), press.list(text.aims(), press.grid().left()));
        boolean fits = aims && body.height() + more.height() + foot.height() <= press.room();
        return press.side(fits ? Box.stack(body, more) : body, foot, press.hole(back), text.draft());
    }

    private boolean isBack(int side) {
        return isRinged() && side % 2 == 1;
    }

    private Box header(int side, int start, int end, Optional<String> ofSeveral) {
        if (side == 0) {
            return header.first(ofSeveral);
        }
        String continued = continued(start, end);
        return isBack(side) ? header.behind(Optional.of(continued)) : header.further(continued, ofSeveral);
    }

    private String continued(int start, int end) {
        if (start == end) {
            return labels.text(Label.CONTINUED_CLOSING);
        }
        return end - start == 1
                ? labels.text(Label.CONTINUED_COUNT, numeral(start))
                : labels.text(Label.CONTINUED_COUNTS, numeral(start), numeral(end - 1));
    }

    /** Sends the reader on: which counts are not here, and where they are. */
    private Box over(int from, boolean behind) {
        String rest = labels.text(text.cautions().isEmpty() ? Label.OVER_CLOSING : Label.OVER_CAUTIONS);
        String counts = over(from);
        String what = counts.isEmpty()
                ? rest.substring(0, 1).toUpperCase(labels.language().locale()) + rest.substring(1)
                : counts + ", " + rest;
        Label where = !isRinged() ? Label.OVER_SHEET : behind ? Label.OVER_CARD : Label.OVER_BACK;
        String words = Message.titled(what, labels.text(where))
                .sentence()
                .in(labels.language().locale());
        return Box.stack(
                press.space(0.3),
                press.paragraph(press.words(Face.BOLD, words), press.grid().axis()));
    }

    private String over(int from) {
        int last = text.counts().size() - 1;
        if (from > last) {
            return "";
        }
        return from == last
                ? labels.text(Label.OVER_COUNT, numeral(from))
                : labels.text(Label.OVER_COUNTS, numeral(from), numeral(last));
    }

    private String numeral(int count) {
        return text.counts().get(count).numeral();
    }

    private Optional<String> ofSeveral(int card, int of) {
        return Optional.of(labels.text(Label.ONE_OF, card, of));
    }
}
