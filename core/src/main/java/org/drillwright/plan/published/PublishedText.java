package org.drillwright.plan.published;

import java.time.ZoneId;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.kept.YamlWords;

/** A published plan as YAML: the same plan gives the same text, of which its mark is taken. */
public final class PublishedText {

    /** The form of these files. */
    public static final int FORM = 1;

    private PublishedText() {}

    /** The text of a file: what the plan says, its mark, and when it was published. */
    public static String file(Publication plan) {
        String said = of(plan.term());
        int first = said.indexOf('\n') + 1;
        return said.substring(0, first)
                + "mark: " + plan.mark().shown() + "\n"
                + "published: \"" + plan.published() + "\"\n"
                + said.substring(first);
    }

    /** What the plan says, without its mark and its day. */
    static String of(PublishedTerm term) {
        StringBuilder text = new StringBuilder();
        text.append("published-term: ").append(FORM).append('\n');
        text.append("term: ").append(YamlWords.quoted(term.named())).append('\n');
        text.append("after: ")
                .append(term.after().map(PlanMark::shown).orElse("none"))
                .append('\n');
        stated("title", term.title(), text);
        stated("place", term.place(), text);
        stated("zone", term.zone().map(ZoneId::getId).orElse(""), text);
        term.exam().ifPresent(day -> text.append("exam: ").append(day).append('\n'));
        text.append("classes:").append(term.classes().isEmpty() ? " []" : "").append('\n');
        term.classes().forEach(one -> one(one, text));
        return text.toString();
    }

    private static void stated(String key, String words, StringBuilder text) {
        if (!words.isEmpty()) {
            text.append(key).append(": ").append(YamlWords.quoted(words)).append('\n');
        }
    }

    private static void one(PublishedClass one, StringBuilder text) {
        text.append("  - key: ").append(YamlWords.quoted(one.key())).append('\n');
        text.append("    date: ").append(one.date()).append('\n');
        one.begins()
                .ifPresent(time -> text.append("    begins: \"").append(time).append("\"\n"));
        text.append("    minutes: ").append(one.minutes()).append('\n');
        text.append("    groups:").append(one.groups().isEmpty() ? " []" : "").append('\n');
        for (GroupCells cells : one.groups()) {
            text.append("      - {name: ")
                    .append(YamlWords.quoted(cells.group()))
                    .append(", new: ")
                    .append(YamlWords.listed(cells.asNew()))
                    .append(", again: ")
                    .append(YamlWords.listed(cells.again()))
                    .append("}\n");
        }
    }
}
