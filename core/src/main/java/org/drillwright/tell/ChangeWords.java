package org.drillwright.tell;

import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.plan.pair.Change;
import org.drillwright.plan.pair.Walk;
import org.drillwright.record.History;

/** Says how people change over. */
public final class ChangeWords {

    private ChangeWords() {}

    /** One sentence for each, the rule last. */
    public static List<String> of(List<Change> changes) {
        return changes.stream().map(ChangeWords::sentence).toList();
    }

    private static String sentence(Change change) {
        if (change instanceof Change.Still still) {
            return "Stand still: " + String.join(", ", still.people()) + ".";
        } else if (change instanceof Change.Unformed unformed) {
            return unformed.drill() + ": no forming, everyone reads the sheet. " + why(unformed);
        } else if (change instanceof Change.Crossing crossing) {
            return "After round " + crossing.after() + " "
                    + (crossing.people().isEmpty()
                            ? "nobody changes lines"
                            : listed(crossing.people()) + " change lines")
                    + "; everyone finds their new post.";
        } else if (change instanceof Change.LineA line) {
            return lineA(line);
        } else if (change instanceof Change.LineB line) {
            return "Line B begins opposite, from post 1 onwards: "
                    + listed(line.walk().moves()) + ".";
        } else if (change instanceof Change.Unpaired unpaired) {
            return "Whoever has nobody opposite "
                    + (unpaired.joins()
                            ? "joins a pair as shown on the sheet, then returns."
                            : "rests for that round.");
        } else if (change instanceof Change.PostUp up) {
            return "At each change line B moves one post up, from post 1 to post 2 and so on"
                    + (up.isAlways() ? ", even when the drill changes" : "")
                    + "; whoever leaves the last post walks round behind line A to post 1.";
        } else if (change instanceof Change.Read read) {
            return "At each change everyone reads the sheet"
                    + (read.isBetter() ? ": if the lines walked, more pairs would meet again." : ".");
        }
        return "All the others move one place on round the ring.";
    }

    private static String why(Change.Unformed unformed) {
        return switch (unformed.why()) {
            case TOO_MANY_NEW -> "So many are new to it that some of them have to work together.";
            case ONE_LINE ->
                unformed.together() + " have to be in one line, as they are new to it or kept apart: the other "
                        + unformed.others()
                        + (unformed.helpers() == 0 ? "" : " and the " + unformed.helpers() + " who can help")
                        + " don't fill the second line.";
            case UNEVEN ->
                "Those who have to be in one line, as they are new to it or kept apart, can't be split"
                        + " into two lines of the same length.";
            case REST -> "Whoever rests would have to join a pair, but may not join any.";
        };
    }

    private static String lineA(Change.LineA line) {
        Walk walk = line.walk();
        String when = line.isAll()
                ? "Line A stays"
                : (walk.from() == walk.to() ? "Round " + walk.from() : "Rounds " + walk.from() + " to " + walk.to())
                        + ": line A stays";
        return when + ", from post 1 onwards: " + listed(walk.stays()) + ".";
    }

    private static String listed(List<String> names) {
        return names.stream()
                .map(name ->
                        name.equals(Walk.REST) ? "nobody" : name.equals(History.INSTRUCTOR) ? "the instructor" : name)
                .collect(Collectors.joining(", "));
    }
}
