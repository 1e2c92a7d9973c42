package org.drillwright.model;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A school's settings, each with a default.
 *
 * @param levels in order, the first the lowest
 * @param gear default gear, keyed by level, weapon or both ({@code intermediate}, {@code sabre}, {@code intermediate
 *     sabre}); the most exact key wins
 * @param words forms that the school adds to the vocabulary, keyed by the form, each with the term it stands for
 * @param parries rows of the parry table that the school replaces: weapon, then position, then the line it closes
 * @param fundamentals what a drill can work on
 * @param font what cards are set in; empty for the program's own
 * @param classLength how long a class lasts
 * @param count how long a count lasts where a drill has no tempo of its own
 */
public record School(
        String name,
        List<Level> levels,
        List<DrillSet> sets,
        Map<String, List<String>> gear,
        Map<String, String> words,
        Map<Weapon, Map<String, String>> parries,
        List<String> fundamentals,
        CardSize card,
        SheetSize sheet,
        Language language,
        Optional<SchoolFont> font,
        Duration classLength,
        Duration count) {

    public School {
        levels = List.copyOf(levels);
        sets = List.copyOf(sets);
        gear = Map.copyOf(gear);
        words = Map.copyOf(words);
        parries = Map.copyOf(parries);
        fundamentals = List.copyOf(fundamentals);
    }

    /** What holds where a school says nothing. */
    public static final School DEFAULT = new School(
            "",
            List.of(
                    new Level("beginner", Level.Turns.ONE, Level.Blades.NONE),
                    new Level("intermediate", Level.Turns.JOINED, Level.Blades.BY_THE_COUNT),
                    new Level("training", Level.Turns.FREE, Level.Blades.FREE)),
            List.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            List.of("stance", "footwork", "line", "distance", "timing", "attention", "tactics"),
            CardSize.A6,
            SheetSize.A4,
            Language.ENGLISH,
            Optional.empty(),
            Duration.ofMinutes(60),
            Duration.ofSeconds(2));

    public Optional<Level> level(String wanted) {
        return levels.stream().filter(level -> level.name().equals(wanted)).findFirst();
    }

    /** Where a level stands in the order, from 0; -1 if the school has none of that name. */
    public int rank(String level) {
        for (int at = 0; at < levels.size(); at++) {
            if (levels.get(at).name().equals(level)) {
                return at;
            }
        }
        return -1;
    }

    /** The set of that name; a level's name is a set of all its drills where no set has it. */
    public Optional<DrillSet> set(String wanted) {
        return sets.stream()
                .filter(set -> set.name().equals(wanted))
                .findFirst()
                .or(() -> level(wanted).map(level -> new DrillSet(wanted, Optional.of(wanted), List.of())));
    }

    /** The gear of a drill: its own list, or else the school's for its level and weapon. */
    public List<String> gearOf(Drill drill) {
        if (!drill.gear().isEmpty()) {
            return drill.gear();
        }
        String weapon = drill.weapon().word();
        for (String key : List.of(drill.level() + " " + weapon, weapon, drill.level())) {
            List<String> listed = gear.get(key);
            if (listed != null) {
                return listed;
            }
        }
        return List.of();
    }

    /**
     * This school in another language.
     *
     * @param word what a level or a fundamental is called there
     */
    public School in(Language other, UnaryOperator<String> word) {
        return new School(
                name,
                levels.stream()
                        .map(level -> new Level(word.apply(level.name()), level.turns(), level.blades()))
                        .toList(),
                sets,
                gear,
                words,
                parries,
                fundamentals.stream().map(word).toList(),
                card,
                sheet,
                other,
                font,
                classLength,
                count);
    }
}
