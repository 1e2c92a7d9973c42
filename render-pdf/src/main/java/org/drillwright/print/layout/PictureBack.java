package org.drillwright.print.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.CardSize;
import org.drillwright.print.diagram.Picture;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.layout.block.FootBlock;
import org.drillwright.print.layout.block.HeaderBlock;
import org.drillwright.print.layout.block.PictureRow;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.text.Typefaces;

/**
 * The back of a card that holds its drill in front: what it is for, which cards stand before and behind it, and the
 * pictures of the counts, larger than in front and told in a sentence.
 */
final class PictureBack {

    /** So many counts leave room for large pictures. */
    private static final int FEW = 3;

    private final CardText text;
    private final CardSize size;
    private final Press press;

    PictureBack(CardText text, Format format, Typefaces faces) {
        this.text = text;
        this.size = format.size();
        this.press = Press.of(text, format.grid(), faces);
    }

    /** With pictures as large as fit, on small cards and for long drills with sentences only; nothing if none fit. */
    Optional<Frame> frame() {
        return widths().map(this::frame).flatMap(Optional::stream).findFirst();
    }

    /** In points; 0 for sentences only. */
    private Stream<Double> widths() {
        boolean few = text.counts().size() <= FEW;
        Stream<Double> pictures = switch (size) {
            case A7, INDEX_3X5, WALL_A4, WALL_A3 -> Stream.of();
            case A6, INDEX_4X6, QUARTER_LETTER -> few ? Stream.of(48.0, 34.0) : Stream.of(34.0);
            case A5, INDEX_5X8, HALF_LETTER -> few ? Stream.of(70.0, 50.0) : Stream.of(50.0);
        };
        return Stream.concat(pictures.map(Millimetres::toPoints), Stream.of(0.0));
    }

    private Optional<Frame> frame(double width) {
        List<Box> parts = new ArrayList<>();
        parts.add(new HeaderBlock(text, press).behind(Optional.empty()));
        parts.add(press.list(text.aims(), press.grid().left()));
        parts.add(press.space(text.aims().isEmpty() ? 0 : 0.4));
        parts.add(press.rule(LineWeight.HEAVY));
        for (int at = 0; at < text.counts().size(); at++) {
            CardText.Count count = text.counts().get(at);
            Optional<Picture> picture = count.picture();
            if (picture.isPresent()) {
                parts.add(PictureRow.of(count.numeral(), picture.get(), width, press));
                parts.add(press.rule(at == text.counts().size() - 1 ? LineWeight.HEAVY : LineWeight.THIN));
            }
        }
        Box body = Box.stack(parts);
        Box foot = new FootBlock(text.foot(), press).set();
        return body.height() + foot.height() > press.room() || !body.broken().isEmpty()
                ? Optional.empty()
                : Optional.of(press.side(body, foot, press.hole(true), text.draft()));
    }
}
