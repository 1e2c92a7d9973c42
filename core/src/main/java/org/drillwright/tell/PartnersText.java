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

    /** @param lately what is to be said of the two together, by the other's name */
    public static String of(String person, List<TrainingPartner> partners, Map<String, List<String>> lately) {
        Page page = new Page();
        page.line("Who could train with " + person + ", nearest first:");
        partners.forEach(partner -> page.wrapped(
                "  " + partner.name() + ": ", about(partner, lately.getOrDefault(partner.name(), List.of()))));
        if (partners.isEmpty()) {
            page.line("  nobody: no day in common, away, solo, or kept apart.");
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
