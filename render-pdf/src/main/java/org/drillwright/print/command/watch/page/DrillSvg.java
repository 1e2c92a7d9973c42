package org.drillwright.print.command.watch.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.model.Language;
import org.drillwright.print.command.live.LiveDrill;
import org.drillwright.print.command.live.Snapshot;
import org.drillwright.print.diagram.Legend;
import org.drillwright.print.diagram.Sample;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.svg.SvgWriter;
import org.drillwright.wording.Message;

/** Cards and pictures as SVG. */
final class DrillSvg {

    /** The signs of the key are those of a picture so wide, in points. */
    private static final double WIDTH = 200;

    /** Strokes at the edge are not to be cut in half, in points. */
    private static final double EDGE = 4;

    private final Locale language;
    private final SvgWriter writer;

    /** @param language in which they are named; what is in them speaks the school's */
    DrillSvg(Snapshot school, Locale language) {
        this.language = language;
        this.writer = new SvgWriter(school.faces(), school.school().language().locale());
    }

    /** One of a drill's cards, from 0. */
    Optional<String> card(LiveDrill sheet, int number) {
        List<Frame> cards = sheet.preview().map(preview -> preview.cards()).orElse(List.of());
        return at(cards, number)
                .map(card -> writer.write(
                        card,
                        named(
                                cards.size() == 1
                                        ? Message.of(DrillSvg.class, "the.card")
                                        : Message.of(DrillSvg.class, "one.card", number + 1, cards.size()))));
    }

    /** One of a drill's pictures, from 0: start, strokes and counts, closing. */
    Optional<String> picture(LiveDrill sheet, int number) {
        return new PictureStrip(sheet.pictures()).picture(number).map(this::picture);
    }

    /** One of those between a picture and the next, from 1. */
    Optional<String> between(LiveDrill sheet, int number, int between) {
        return new PictureStrip(sheet.pictures()).between(number, between).map(this::picture);
    }

    private String picture(Frame frame) {
        return writer.write(frame, named(Message.of(DrillSvg.class, "the.picture")));
    }

    /** One of the signs of the key, from 0. */
    Optional<String> sign(int number) {
        return at(Legend.in(new Language(language.getLanguage())), number)
                .map(sign -> writer.write(frame(sign), named(Message.of(DrillSvg.class, "the.sign"))));
    }

    private String named(Message name) {
        return name.in(language);
    }

    private static Frame frame(Sample sign) {
        double height = sign.height(WIDTH);
        Rectangle box = new Rectangle(EDGE, EDGE, WIDTH, height);
        Node.Figure figure = new Node.Figure(sign.words(), box, sign.draw(EDGE, EDGE, WIDTH));
        return new Frame(WIDTH + 2 * EDGE, height + 2 * EDGE, EDGE, List.of(), List.of(figure));
    }

    private static <T> Optional<T> at(List<T> list, int number) {
        return number < list.size() ? Optional.of(list.get(number)) : Optional.empty();
    }
}
