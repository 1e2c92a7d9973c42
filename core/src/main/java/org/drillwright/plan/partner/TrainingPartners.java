package org.drillwright.plan.partner;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillwright.model.Drill;
import org.drillwright.model.Hands;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;

/** Finds who could train with a person outside class; the two are equals. */
public final class TrainingPartners {

    private static final int UNKNOWN = 1_000;

    private final Roster roster;
    private final List<String> levels;
    private final SharedDrills drills;

    /** @param levels the school's levels, the lowest first */
    public TrainingPartners(Roster roster, List<String> levels, SharedDrills drills) {
        this.roster = roster;
        this.levels = List.copyOf(levels);
        this.drills = drills;
    }

    /**
     * Everyone who may train with a person, the nearest in skill first, then whoever can come on more days; nobody who is
     * away or does solo work, nobody from whom the person is kept apart, and nobody without a day in common where both state their days.
     */
    public List<TrainingPartner> of(Person person) {
        return roster.people().stream()
                .filter(other -> !other.name().equals(person.name()))
                .filter(other -> !other.away() && !other.solo())
                .filter(other -> !roster.areApart(person.name(), other.name()))
                .filter(other -> canMeet(person, other))
                .map(other -> partner(person, other))
                .sorted(Comparator.<TrainingPartner>comparingInt(
                                one -> one.gap().orElse(UNKNOWN))
                        .thenComparingInt(TrainingPartner::levels)
                        .thenComparingInt(one -> -one.days().size())
                        .thenComparingInt(one -> -one.shared().size()))
                .toList();
    }

    private static boolean canMeet(Person one, Person other) {
        return one.days().isEmpty()
                || other.days().isEmpty()
                || one.days().stream().anyMatch(other.days()::contains);
    }

    private TrainingPartner partner(Person one, Person other) {
        boolean skills = one.skill().isPresent() && other.skill().isPresent();
        return new TrainingPartner(
                other.name(),
                skills
                        ? OptionalInt.of(
                                Math.abs(one.skill().getAsInt() - other.skill().getAsInt()))
                        : OptionalInt.empty(),
                levelsApart(one, other),
                hands(one, other),
                one.days().stream().filter(other.days()::contains).toList(),
                drills.of(one, other).stream().map(Drill::id).toList());
    }

    private int levelsApart(Person one, Person other) {
        int first = one.level().map(levels::indexOf).orElse(-1);
        int second = other.level().map(levels::indexOf).orElse(-1);
        return first < 0 || second < 0 ? 0 : Math.abs(first - second);
    }

    private static Optional<Hands> hands(Person one, Person other) {
        return one.hand()
                .flatMap(hand -> other.hand().map(second -> hand.equals(second) ? Hands.SAME : Hands.OPPOSITE));
    }
}
