package org.drillwright.report.plan;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drillwright.model.Hands;
import org.drillwright.plan.partner.TrainingPartner;
import org.drillwright.wording.Message;

/** Who could train with a person, for a terminal. */
public final class PartnersText {

    private PartnersText() {}

    /**
     * The nearest who have something to work on; then the names of those who haven't.
     *
     * @param most how many are told of; of any more, only how many there are
     * @param lately what is to be said of the two together, by the other's name
     */
    public static String of(
            String person,
            List<TrainingPartner> partners,
            int most,
            Map<String, List<String>> lately,
            Locale language) {
        TerminalPage page = new TerminalPage(language);
        page.line(said("who.trains", person));
        List<TrainingPartner> able =
                partners.stream().filter(partner -> !partner.shared().isEmpty()).toList();
        able.stream()
                .limit(most)
                .forEach(partner -> page.wrapped(
                        "  " + partner.name() + ": ",
                        about(partner, lately.getOrDefault(partner.name(), List.of()), language)));
        if (able.size() > most) {
            Message more = Message.counted(PartnersText.class, "more", able.size() - most);
            return page.line("  " + page.said(more)).toString();
        }
        if (partners.isEmpty()) {
            page.line("  " + page.said(said("nobody.trains")));
        }
        List<String> unable = partners.stream()
                .filter(partner -> partner.shared().isEmpty())
                .map(TrainingPartner::name)
                .toList();
        if (!unable.isEmpty()) {
            page.wrapped("  ", said("no.shared", Message.words(unable)));
        }
        return page.toString();
    }

    private static Message about(TrainingPartner partner, List<String> lately, Locale language) {
        List<Message> about = new ArrayList<>();
        partner.gap().ifPresent(gap -> about.add(said("skill.apart", gap)));
        if (partner.levels() > 0) {
            about.add(counted("levels.apart", partner.levels()));
        }
        partner.hands().ifPresent(hands -> about.add(said(hands == Hands.SAME ? "same.hands" : "opposite.hands")));
        List<String> days = partner.days().stream()
                .map(day -> day.getDisplayName(TextStyle.FULL, language))
                .toList();
        about.add(days.isEmpty() ? said("days.unknown") : said("days", Message.words(days)));
        about.add(counted("drills.both", partner.shared().size()));
        lately.forEach(words -> about.add(Message.plain(words)));
        return said("ended", Message.clauses(about));
    }

    private static Message counted(String key, int count) {
        return Message.counted(PartnersText.class, key, count);
    }

    private static Message said(String key, Object... values) {
        return Message.of(PartnersText.class, key, values);
    }
}
