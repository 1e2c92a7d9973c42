package org.drillwright.print.bench.peers.card;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;

/**
 * A part of a card without its place: what it is, and what it says or is made of. Read back from our own card, so that
 * peers say word for word the same in the same table.
 */
public record Part(Role role, List<Run> runs, List<Part> parts) {

    public Part {
        runs = List.copyOf(runs);
        parts = List.copyOf(parts);
    }

    public static Part of(Frame card) {
        return part(card.content().get(0));
    }

    private static Part part(Node node) {
        if (node instanceof Node.Group group) {
            return new Part(
                    group.role(),
                    List.of(),
                    group.parts().stream().map(Part::part).toList());
        }
        if (node instanceof Node.Words words) {
            return new Part(words.role(), runs(words.lines()), List.of());
        }
        throw new IllegalStateException("a card without pictures has no " + node);
    }

    private static List<Run> runs(List<Mark.Text> lines) {
        List<Run> runs = new ArrayList<>();
        for (int at = 0; at < lines.size(); at++) {
            Mark.Text line = lines.get(at);
            boolean goesOn = at == lines.size() - 1
                    || line.baseline() == lines.get(at + 1).baseline()
                    || line.text().endsWith("\u00AD")
                    || line.text().endsWith("-");
            String text = line.text().replace("\u00AD", "") + (goesOn ? "" : " ");
            boolean bold = line.face() == Face.BOLD;
            if (!runs.isEmpty() && runs.get(runs.size() - 1).bold() == bold && !numeral(line)) {
                text = runs.remove(runs.size() - 1).text() + text;
            }
            runs.add(new Run(text, bold));
            if (numeral(line) && at < lines.size() - 1) {
                runs.add(new Run(" ", false));
            }
        }
        return runs;
    }

    /** The number of a count stands apart from the call behind it. */
    private static boolean numeral(Mark.Text line) {
        return line.text().chars().allMatch(Character::isDigit);
    }
}
