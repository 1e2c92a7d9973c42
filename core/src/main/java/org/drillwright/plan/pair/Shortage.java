package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.register.History;
import org.drillwright.wording.Message;

/**
 * Why not everyone has a partner, as countable facts: those of the first round of a drill, as it was planned.
 *
 * @param drill the drill of which it is told
 * @param fresh students who are new to it
 * @param knowing students who know it
 * @param solo the round if whoever has no partner worked alone
 * @param helpers who work with one of them, or could; none if nobody does
 * @param threes the round if thirds joined pairs
 * @param bothNew the round if those who are new worked together
 */
public record Shortage(
        String drill, int fresh, int knowing, Extras solo, List<String> helpers, Extras threes, Extras bothNew) {

    public Shortage {
        helpers = List.copyOf(helpers);
    }

    /** The most pairs that can be made with nobody kept from a safe partner. */
    public int pairs() {
        return (fresh + knowing - left()) / 2;
    }

    /** Students who then remain: one only if the number of students is odd. */
    public int left() {
        return solo.helpers() + solo.blanks();
    }

    /** Of these, how many work with the instructor or assistants. */
    public int helped() {
        return solo.helpers();
    }

    /** Whether they remain only because the number of students is odd. */
    public boolean parity() {
        return left() == (fresh + knowing) % 2;
    }

    /** The facts in one sentence. */
    public Message sentence() {
        if (parity() && fresh + knowing == 1) {
            return helped() == 1 ? said("alone.helped", helper()) : said("alone");
        }
        if (parity()) {
            return helped() == 1 ? said("odd.helped", fresh + knowing, helper()) : said("odd", fresh + knowing);
        }
        Message most = pairs() == 0 ? said("pairs.none") : counted("pairs", pairs());
        if (fresh > knowing) {
            Message known = knowing == 0 ? said("knowing.none") : counted("knowing", knowing);
            return said("too.many.new", fresh, known, most, counted("remain", left()));
        }
        return said("kept.apart", most, fresh + knowing, counted("remain", left()));
    }

    /** What can be done about it, one sentence for each choice that there is. */
    public List<Message> choices() {
        if (parity() || left() == 0) {
            return List.of();
        }
        List<Message> choices = new ArrayList<>();
        int alone = solo.blanks();
        choices.add(
                helped() == 0
                        ? said("solo.all", left())
                        : said(
                                "solo",
                                alone == 0
                                        ? helping(helped())
                                        : Message.listed(List.of(helping(helped()), counted("watching", alone)))));
        if (threes.threes() > 0) {
            choices.add(rest("threes", counted("threes", threes.threes()), threes));
        }
        if (bothNew.watched() > 0) {
            Message pairs = counted("new.pairs", bothNew.watched());
            choices.add(rest(
                    "new",
                    bothNew.threes() == 0 ? pairs : Message.listed(List.of(pairs, counted("threes", bothNew.threes()))),
                    bothNew));
        }
        return List.copyOf(choices);
    }

    /** What becomes of those who have no place in these groups. */
    private Message rest(String key, Message groups, Extras way) {
        if (way.blanks() == 0) {
            return way.helpers() == 0 ? said(key, groups) : said(key + ".helped", groups, helping(way.helpers()));
        }
        Message solos = counted("solos", way.blanks());
        return way.helpers() == 0
                ? said(key + ".alone", groups, solos)
                : said(key + ".helped.alone", groups, helping(way.helpers()), solos);
    }

    private Message helping(int count) {
        return counted("helping", count, helper());
    }

    private Message helper() {
        return Message.or(helpers.stream()
                .map(name -> name.equals(History.INSTRUCTOR) ? said("instructor") : Message.plain(name))
                .toList());
    }

    private static Message said(String key, Object... values) {
        return Message.of(Shortage.class, key, values);
    }

    private static Message counted(String key, int count, Object... more) {
        return Message.counted(Shortage.class, key, count, more);
    }
}
