package org.drillwright.print.booklet;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Quarter;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Block;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Type;

/** A page for each card of a drill, at its true size; under the last what the card leaves out and where the way leads. */
record DrillPages(List<Entry> entries, Map<String, Integer> pages, Type type, double width, Labels labels) {

    DrillPages {
        entries = List.copyOf(entries);
        pages = Map.copyOf(pages);
    }

    /** Lays one drill from a new page on. */
    void lay(Entry entry, Flow flow) {
        for (Frame card : entry.cards()) {
            flow.turn();
            flow.add(framed(card));
        }
        labelled(Label.WORKS_ON, String.join(", ", entry.drill().worksOn()), flow);
        labelled(
                Label.NEEDS,
                named(other -> entry.drill().needs().contains(other.drill().id())),
                flow);
        labelled(
                Label.LEADS_TO,
                named(other -> other.drill().needs().contains(entry.drill().id())),
                flow);
        labelled(Label.PURPOSE, entry.drill().purpose(), flow);
        labelled(Label.NOTE, entry.drill().note(), flow);
    }

    private void labelled(Label label, String words, Flow flow) {
        if (!words.isBlank()) {
            flow.add(type.labelled(labels.text(label), words, width));
        }
    }

    /** Titles with their pages. */
    private String named(Predicate<Entry> wanted) {
        return entries.stream()
                .filter(wanted)
                .map(entry -> entry.title() + "\u00A0("
                        + pages.getOrDefault(entry.drill().id(), 1) + ")")
                .collect(Collectors.joining("; "));
    }

    /** In the middle, its edge drawn: nobody cuts a book. */
    private Block framed(Frame card) {
        double x = (width - card.width()) / 2;
        Mark edge = Mark.Shape.stroked(Outline.box(new Box(x, 0, card.width(), card.height())), 0.5, Ink.BLACK);
        return new Block(
                card.height() + 0.8 * type.size(), List.of(edge), List.of(new Node.Placed(x, 0, Quarter.UP, card)));
    }
}
