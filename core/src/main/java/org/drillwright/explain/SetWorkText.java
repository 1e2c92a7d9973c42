package org.drillwright.explain;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.drillwright.explain.SetWork.Item;
import org.drillwright.explain.SetWork.Theme;
import org.drillwright.wording.Message;

/** What a set works, as a table for people. */
public final class SetWorkText {

    private static final int NAMED = 3;

    private final Locale language;

    private SetWorkText(Locale language) {
        this.language = language;
    }

    /** @param drills how many drills the set has */
    public static String of(SetWork work, int drills, Locale language) {
        return new SetWorkText(language).text(work, drills);
    }

    private String text(SetWork work, int drills) {
        int widest = work.items().values().stream()
                .flatMap(List::stream)
                .mapToInt(item -> item.words().in(language).length())
                .max()
                .orElse(0);
        StringBuilder text = new StringBuilder();
        for (Theme theme : Theme.values()) {
            text.append(words(theme).in(language)).append('\n');
            work.of(theme).forEach(item -> text.append(row(item, widest, drills)));
            text.append('\n');
        }
        List<Message> never = never(work);
        text.append(Message.of(SetWorkText.class, never.isEmpty() ? "never.all" : "never.some")
                        .in(language))
                .append('\n');
        never.forEach(line -> text.append("  ").append(line.in(language)).append('\n'));
        if (work.unjudged() > 0) {
            text.append(Message.of(SetWorkText.class, "unjudged", work.counts(), work.unjudged())
                            .in(language))
                    .append('\n');
        }
        return text.toString();
    }

    private static Message words(Theme theme) {
        return Message.of(SetWorkText.class, "theme." + theme.word());
    }

    private String row(Item item, int widest, int drills) {
        String words = item.words().in(language);
        String share = Message.of(SetWorkText.class, "share", item.drills().size(), drills)
                .in(language);
        return "  " + words + " ".repeat(widest - words.length()) + "  " + " ".repeat(Math.max(0, 8 - share.length()))
                + share + "  " + names(item.drills()).in(language) + "\n";
    }

    /** The first few: a table is to be taken in at a glance. */
    private static Message names(List<String> drills) {
        if (drills.isEmpty()) {
            return Message.of(SetWorkText.class, "never");
        }
        int left = drills.size() - NAMED;
        Message first = Message.words(drills.subList(0, Math.min(NAMED, drills.size())));
        return left > 0 ? Message.of(SetWorkText.class, "named.more", first, left) : first;
    }

    /** By theme, such as {@code parries: prime, seconde}. */
    private static List<Message> never(SetWork work) {
        return Stream.of(Theme.values())
                .filter(theme -> !work.never(theme).isEmpty())
                .map(theme -> Message.of(
                        SetWorkText.class,
                        "never.theme",
                        words(theme),
                        Message.listed(
                                work.never(theme).stream().map(Item::words).toList())))
                .toList();
    }
}
