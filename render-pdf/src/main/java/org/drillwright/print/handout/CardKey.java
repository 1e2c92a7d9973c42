package org.drillwright.print.handout;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.diagram.Legend;
import org.drillwright.print.diagram.Sample;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Sign;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;

/** How a card is read: its three signs, and what its pictures show. */
record CardKey(Type type, double width, Labels labels) {

    private static final double SAMPLE = Millimetres.toPoints(18);

    private static final int COLUMNS = 2;

    /** The signs. */
    void addSigns(Flow flow) {
        flow.add(type.times(1.2).paragraph(Face.BOLD, labels.text(Label.READING_TITLE), width));
        flow.add(Box.stack(
                sign(Sign.leader(place(), type.size()), Label.READING_LEADER),
                sign(Sign.follower(place(), type.size()), Label.READING_FOLLOWER),
                sign(Sign.safety(place(), type.size()), Label.READING_SAFETY),
                Box.space(0.4 * type.size()),
                type.paragraph(Face.REGULAR, labels.text(Label.READING_HOW), width)));
    }

    /** What the pictures show, on a page of its own. */
    void addPictures(Flow flow) {
        flow.turn();
        flow.add(type.times(1.8).title(labels.text(Label.LEGEND_TITLE), width).padded(type.size()));
        List<Sample> legend = Legend.in(labels.language());
        for (int at = 0; at < legend.size(); at += COLUMNS) {
            flow.add(row(legend.subList(at, Math.min(legend.size(), at + COLUMNS))));
        }
    }

    private Sign.Place place() {
        return new Sign.Place(0, type.faces().of(Face.REGULAR).ascent() * type.size(), type.capHeight());
    }

    /** The words say what the sign looks like, so that they serve without it. */
    private Box sign(List<Mark> marks, Label words) {
        double x = 1.3 * type.size();
        SetText set = type.set(Face.REGULAR, labels.text(words), x, 0, width - x);
        return Box.of(Role.PARAGRAPH, set).on(marks);
    }

    private Box row(List<Sample> samples) {
        List<Mark> marks = new ArrayList<>();
        List<Node> nodes = new ArrayList<>();
        double column = width / COLUMNS;
        double height = 0;
        for (int at = 0; at < samples.size(); at++) {
            Sample sample = samples.get(at);
            double x = at * column + SAMPLE + 0.7 * type.size();
            SetText set = type.set(Face.REGULAR, sample.words(), x, 0, (at + 1) * column - x - type.size());
            double whole = Math.max(set.height(), sample.height(SAMPLE));
            marks.addAll(sample.draw(at * column, (whole - sample.height(SAMPLE)) / 2, SAMPLE));
            nodes.add(set.as(Role.PARAGRAPH).moved(0, (whole - set.height()) / 2));
            height = Math.max(height, whole);
        }
        return Box.of(height + 1.2 * type.size(), marks, nodes);
    }
}
