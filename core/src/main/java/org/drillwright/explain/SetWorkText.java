package org.drillwright.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.explain.SetWork.Item;
import org.drillwright.explain.SetWork.Theme;

/** What a set works, as a table for people. */
public final class SetWorkText {

    private static final int NAMED = 3;

    private SetWorkText() {}

    /** @param drills how many drills the set has */
    public static String of(SetWork work, int drills) {
        int widest = work.items().values().stream()
                .flatMap(List::stream)
                .mapToInt(item -> item.words().length())
                .max()
                .orElse(0);
        StringBuilder text = new StringBuilder();
        for (Theme theme : Theme.values()) {
            text.append(theme.word()).append('\n');
            work.of(theme).forEach(item -> text.append(row(item, widest, drills)));
            text.append('\n');
        }
        List<String> never = never(work);
        text.append(never.isEmpty() ? "Everything here is touched at least once.\n" : "Never touched:\n");
        never.forEach(line -> text.append("  ").append(line).append('\n'));
        if (work.unjudged() > 0) {
            text.append("Of ")
                    .append(work.counts())
                    .append(" counts ")
                    .append(work.unjudged())
                    .append(" could not be judged; what they work may be missing here.\n");
        }
        return text.toString();
    }

    private static String row(Item item, int widest, int drills) {
        String share = item.drills().size() + " of " + drills;
        return "  " + item.words() + " ".repeat(widest - item.words().length()) + "  "
                + " ".repeat(Math.max(0, 8 - share.length())) + share + "  " + names(item.drills()) + "\n";
    }

    /** The first few: a table is to be taken in at a glance. */
    private static String names(List<String> drills) {
        int left = drills.size() - NAMED;
        return drills.isEmpty()
                ? "never"
                : String.join(", ", drills.subList(0, Math.min(NAMED, drills.size())))
                        + (left > 0 ? " and " + left + " more" : "");
    }

    /** By theme, such as {@code parries: prime, seconde}. */
    private static List<String> never(SetWork work) {
        List<String> never = new ArrayList<>();
        for (Theme theme : Theme.values()) {
            List<Item> items = work.never(theme);
            if (!items.isEmpty()) {
                never.add(theme.word() + ": " + items.stream().map(Item::words).collect(Collectors.joining(", ")));
            }
        }
        return never;
    }
}
