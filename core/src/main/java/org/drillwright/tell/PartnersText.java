package org.drillwright.tell;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drillwright.model.Hands;
import org.drillwright.plan.partner.TrainingPartner;

/** Who could train with a person, for a terminal. */
public final class PartnersText {

    private PartnersText() {}

    /**
     * The nearest who have something to work on; then the names of those who haven't.
     *
     * @param most how many are told of; of any more, only how many there are
     * @param lately what is to be said of the two together, by the other's name
     */
    public static String of(String person, List<TrainingPartner> partners, int most, Map<String, List<String>> lately) {
        Page page = new Page();
        page.line("Who could train with " + person + ", nearest first:");
        List<TrainingPartner> able =
                partners.stream().filter(partner -> !partner.shared().isEmpty()).toList();
        able.stream()
                .limit(most)
                .forEach(partner -> page.wrapped(
                        "  " + partner.name() + ": ", about(partner, lately.getOrDefault(partner.name(), List.of()))));
        if (able.size() > most) {
            return page.line("  and " + (able.size() - most) + " more; partners NAME lists them all.")
                    .toString();
        }
        if (partners.isEmpty()) {
            page.line("  nobody: no day in common, away, solo, or kept apart.");
        }
        List<String> unable = partners.stream()
                .filter(partner -> partner.shared().isEmpty())
                .map(TrainingPartner::name)
                .toList();
        if (!unable.isEmpty()) {
            page.wrapped(
                    "  ", "No drill yet that both know and that suits their hands: " + String.join(", ", unable) + ".");
        }
        return page.toString();
    }

    private static String about(TrainingPartner partner, List<String> lately) {
        List<String> about = new ArrayList<>();
        partner.gap().ifPresent(gap -> about.add("skill " + gap + " apart"));
        if (partner.levels() > 0) {
            about.add(Page.counted(partner.levels(), "level") + " apart");
        }
        partner.hands().ifPresent(hands -> about.add(hands == Hands.SAME ? "same hands" : "opposite hands"));
        about.add(
                partner.days().isEmpty()
                        ? "days not given by both"
                        : "both free on "
                                + String.join(
                                        ", ",
                                        partner.days().stream()
                                                .map(PartnersText::day)
                                                .toList()));
        about.add(Page.counted(partner.shared().size(), "drill") + " for both");
        about.addAll(lately);
        return String.join("; ", about) + ".";
    }

    private static String day(DayOfWeek day) {
        return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }
}
