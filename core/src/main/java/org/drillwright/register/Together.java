package org.drillwright.register;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.drillwright.wording.Message;

/**
 * What two who train on their own tell of it, each for themselves: whether they met, and who led first. They are equals; of
 * what goes wrong nobody is told but the two.
 */
public final class Together {

    /** Nobody has told anything. */
    public static final Together NONE = new Together(List.of());

    /** Appointments that are looked at; common practice, no source. */
    private static final int LAST = 6;

    /** Weeks of which the minutes are counted; common practice, no source. */
    private static final int WEEKS = 8;

    /** Days in which the other one may still say it otherwise. */
    private static final int PATIENCE = 7;

    private final List<Entry> told;

    /** What became of an appointment. */
    private enum Outcome {
        KEPT,
        MISSED,
        DIFFERENT,
        /** Called off, or not told yet. */
        OPEN
    }

    Together(List<Entry> told) {
        this.told = List.copyOf(told);
    }

    private List<Entry> of(String one, String other) {
        return told.stream()
                .filter(entry -> isOf(entry, one, other) || isOf(entry, other, one))
                .toList();
    }

    private static boolean isOf(Entry entry, String person, String with) {
        return entry.person().equals(person) && entry.with().equals(with) && !person.equals(with);
    }

    private List<LocalDate> days(String one, String other) {
        return of(one, other).stream()
                .filter(entry -> entry.event() != Event.LED_FIRST && entry.event() != Event.WORKED_MINUTES)
                .map(Entry::date)
                .distinct()
                .sorted()
                .toList();
    }

    private Outcome outcome(String one, String other, LocalDate day, LocalDate today) {
        List<Entry> lines = of(one, other).stream()
                .filter(entry -> entry.date().equals(day))
                .toList();
        if (lines.stream().anyMatch(entry -> entry.event() == Event.CALLED_OFF)) {
            return Outcome.OPEN;
        }
        Set<Outcome> said = new HashSet<>();
        Set<String> who = new HashSet<>();
        for (Entry entry : lines) {
            if (entry.event() == Event.KEPT || entry.event() == Event.CAME_LATE) {
                said.add(Outcome.KEPT);
                who.add(entry.person());
            } else if (entry.event() == Event.DID_NOT_COME) {
                said.add(Outcome.MISSED);
                who.add(entry.person());
            }
        }
        if (said.size() > 1) {
            return Outcome.DIFFERENT;
        }
        boolean settled = who.size() == 2 || day.plusDays(PATIENCE).isBefore(today);
        return settled ? said.stream().findFirst().orElse(Outcome.OPEN) : Outcome.OPEN;
    }

    /**
     * How many of their last appointments two have kept, as words; nothing if that is fewer than half of them, or if there
     * was none.
     */
    public Optional<Message> kept(String one, String other, LocalDate today) {
        List<Outcome> counted = days(one, other).stream()
                .sorted(Comparator.reverseOrder())
                .map(day -> outcome(one, other, day, today))
                .filter(outcome -> outcome == Outcome.KEPT || outcome == Outcome.MISSED)
                .limit(LAST)
                .toList();
        int kept = (int) counted.stream().filter(Outcome.KEPT::equals).count();
        return counted.isEmpty() || kept * 2 < counted.size()
                ? Optional.empty()
                : Optional.of(Message.of(Together.class, "together.kept", kept, counted.size()));
    }

    /**
     * How long two worked together lately, as words; nothing if neither tells of it. Where they tell a day differently the
     * shorter time counts.
     */
    public Optional<Message> minutes(String one, String other, LocalDate today) {
        Map<LocalDate, Integer> minutes = new HashMap<>();
        for (Entry entry : of(one, other)) {
            boolean lately = !entry.date().isAfter(today)
                    && entry.date().plusWeeks(WEEKS).isAfter(today);
            if (entry.event() == Event.WORKED_MINUTES
                    && lately
                    && !entry.drill().isEmpty()) {
                minutes.merge(entry.date(), Integer.valueOf(entry.drill()), Math::min);
            }
        }
        int sum = minutes.values().stream().mapToInt(Integer::intValue).sum();
        return sum == 0 ? Optional.empty() : Optional.of(Message.of(Together.class, "together.minutes", sum, WEEKS));
    }

    /** The days that the two remember differently, one sentence each; they count nowhere. */
    public List<Message> differing(String one, String other, LocalDate today) {
        return days(one, other).stream()
                .filter(day -> outcome(one, other, day, today) == Outcome.DIFFERENT)
                .map(day -> Message.of(Together.class, "together.differing", one, other, words(day)))
                .toList();
    }

    private static Message words(LocalDate day) {
        return Message.counted(Together.class, "day." + day.getMonthValue(), day.getDayOfMonth());
    }

    /** Who leads first next: whoever did on fewer drills; of two with equally many whoever's last turn is older. */
    public String leadsFirst(String one, String other) {
        List<LocalDate> turns = turns(one, other);
        List<LocalDate> others = turns(other, one);
        if (turns.size() != others.size()) {
            return turns.size() < others.size() ? one : other;
        }
        return Objects.equals(last(turns), last(others)) || last(turns).isBefore(last(others)) ? one : other;
    }

    private List<LocalDate> turns(String leader, String other) {
        return of(leader, other).stream()
                .filter(entry ->
                        entry.event() == Event.LED_FIRST && entry.person().equals(leader))
                .map(Entry::date)
                .sorted()
                .toList();
    }

    private static LocalDate last(List<LocalDate> turns) {
        return turns.isEmpty() ? LocalDate.MIN : turns.get(turns.size() - 1);
    }
}
