package org.drillwright.plan.partner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.drillwright.model.Drill;
import org.drillwright.model.Hands;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.register.History;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In which order partners for Ash are named: by the gap in skill, by levels, by days in common, by drills in common. */
class NearestPartnerTest {

    private static final List<DayOfWeek> WEEK = List.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.FRIDAY);

    private static Person person(String name, int skill, String level, List<DayOfWeek> days, String... knows) {
        return new Person(
                name,
                Optional.of(level).filter(text -> !text.equals("-")),
                Optional.empty(),
                skill < 0 ? OptionalInt.empty() : OptionalInt.of(skill),
                Set.of(knows),
                days,
                false,
                false);
    }

    private static List<TrainingPartner> partners(Person ash, Person... others) {
        List<Person> all = new ArrayList<>(Arrays.asList(others));
        all.add(ash);
        Roster roster = new Roster(all, List.of(), List.of());
        List<Drill> drills = all.stream()
                .flatMap(person -> person.knows().stream())
                .distinct()
                .sorted()
                .map(id -> TrainingPartnersTest.drill(id, "same"))
                .toList();
        return new TrainingPartners(
                        roster,
                        List.of("beginner", "intermediate", "training"),
                        new SharedDrills(drills, Knowledge.of(roster, History.NONE)))
                .of(ash);
    }

    private static <T> List<T> each(List<TrainingPartner> partners, Function<TrainingPartner, T> what) {
        return partners.stream().map(what).toList();
    }

    /** Bo is 8 away, Cy 3 the other way; of Dee no number is known. */
    @Test
    void the_smallest_gap_comes_first_and_an_unknown_one_last() {
        List<TrainingPartner> partners = partners(
                person("Ash", 10, "-", WEEK),
                person("Dee", -1, "-", WEEK),
                person("Bo", 18, "-", WEEK),
                person("Cy", 7, "-", WEEK));
        assertEquals(List.of("Cy", "Bo", "Dee"), each(partners, TrainingPartner::name));
        assertEquals(
                List.of(OptionalInt.of(3), OptionalInt.of(8), OptionalInt.empty()),
                each(partners, TrainingPartner::gap));
    }

    @Test
    void of_equal_gaps_the_nearer_level_comes_first() {
        List<TrainingPartner> partners = partners(
                person("Ash", 10, "intermediate", WEEK),
                person("Bo", 10, "beginner", WEEK),
                person("Cy", 10, "intermediate", WEEK));
        assertEquals(List.of("Cy", "Bo"), each(partners, TrainingPartner::name));
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource({
        "beginner, training, 2",
        "training, beginner, 2",
        "training, intermediate, 1",
        "intermediate, intermediate, 0",
        "-, training, 0",
        "training, -, 0",
        "elsewhere, training, 0",
        "training, elsewhere, 0"
    })
    void levels_apart(String one, String other, int levels) {
        assertEquals(
                List.of(levels),
                each(partners(person("Ash", 1, one, WEEK), person("Bo", 1, other, WEEK)), TrainingPartner::levels));
    }

    @Test
    void then_more_days_in_common_then_more_drills_in_common() {
        List<TrainingPartner> partners = partners(
                person("Ash", 10, "-", WEEK, "thrust", "parry", "lunge"),
                person("Bo", 10, "-", WEEK.subList(0, 1), "thrust", "parry", "lunge"),
                person("Cy", 10, "-", WEEK.subList(0, 2), "thrust"),
                person("Dee", 10, "-", WEEK.subList(1, 3), "thrust", "parry", "cut"));
        assertEquals(List.of("Dee", "Cy", "Bo"), each(partners, TrainingPartner::name));
        assertEquals(
                List.of(List.of("parry", "thrust"), List.of("thrust"), List.of("lunge", "parry", "thrust")),
                each(partners, TrainingPartner::shared));
        assertEquals(
                List.of(WEEK.subList(1, 3), WEEK.subList(0, 2), WEEK.subList(0, 1)),
                each(partners, TrainingPartner::days));
    }

    @Test
    void who_states_no_days_may_come_on_any() {
        assertEquals(
                List.of("Bo"),
                each(
                        partners(
                                person("Ash", 1, "-", List.of(DayOfWeek.SUNDAY)),
                                person("Bo", 1, "-", List.of()),
                                person("Cy", 1, "-", WEEK)),
                        TrainingPartner::name));
        assertEquals(
                List.of("Cy"),
                each(partners(person("Ash", 1, "-", List.of()), person("Cy", 1, "-", WEEK)), TrainingPartner::name));
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource({"RIGHT, RIGHT, SAME", "LEFT, LEFT, SAME", "RIGHT, LEFT, OPPOSITE", "LEFT, RIGHT, OPPOSITE"})
    void hands(Hand one, Hand other, Hands hands) {
        Person ash = person("Ash", 1, "-", WEEK).withHand(one);
        Person bo = person("Bo", 1, "-", WEEK);
        assertEquals(List.of(Optional.of(hands)), each(partners(ash, bo.withHand(other)), TrainingPartner::hands));
        assertEquals(List.of(Optional.empty()), each(partners(ash, bo), TrainingPartner::hands));
    }
}
