package org.drillwright.explain;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.check.Coverage;
import org.drillwright.check.Subject;
import org.drillwright.model.Hands;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.notation.Line;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Range;
import org.drillwright.terms.Terms;
import org.drillwright.wording.ConstantName;
import org.drillwright.wording.Message;

/**
 * What some drills work, as they were played, and what they never touch. Fundamentals are those that a drill states;
 * lines are those that a stroke went into, feints among them; parries are those that met a stroke or are called a parry;
 * a measure is worked where a count of a drill begins at it; hands count in drills for two.
 *
 * @param items by theme, in the order in which people name them, those that no drill works among them
 * @param counts how many counts the drills have
 * @param unjudged how many of them could not be judged: what they work may be missing
 */
public record SetWork(Map<Theme, List<Item>> items, int counts, int unjudged) {

    /** What is asked of a set. */
    public enum Theme {
        FUNDAMENTALS,
        LINES,
        PARRIES,
        MEASURES,
        HANDS;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Something that a drill can work.
     *
     * @param key its name for programs, such as {@code high-inside}
     * @param words as it is said
     * @param drills the ids of those that work it, in the set's order
     */
    public record Item(String key, Message words, List<String> drills) {
        public Item {
            drills = List.copyOf(drills);
        }
    }

    public SetWork {
        items = Map.copyOf(items);
    }

    public List<Item> of(Theme theme) {
        return items.getOrDefault(theme, List.of());
    }

    /** What no drill works. */
    public List<Item> never(Theme theme) {
        return of(theme).stream().filter(item -> item.drills().isEmpty()).toList();
    }

    public static SetWork of(List<Subject> drills, School school) {
        Map<Theme, Map<String, Gathered>> all = new EnumMap<>(Theme.class);
        for (Theme theme : Theme.values()) {
            Map<String, Gathered> asked = new LinkedHashMap<>();
            asked(theme, drills, school).forEach(item -> asked.put(item.key(), item));
            all.put(theme, asked);
        }
        int counts = 0;
        int unjudged = 0;
        for (Subject drill : drills) {
            for (Theme theme : Theme.values()) {
                worked(theme, drill)
                        .forEach(key -> Optional.ofNullable(
                                        all.getOrDefault(theme, Map.of()).get(key))
                                .ifPresent(
                                        item -> item.drills().add(drill.drill().id())));
            }
            Coverage judged = drill.coverage();
            counts += judged.counts();
            unjudged += judged.gaps().size();
        }
        Map<Theme, List<Item>> items = new EnumMap<>(Theme.class);
        all.forEach((theme, gathered) ->
                items.put(theme, gathered.values().stream().map(Gathered::item).toList()));
        return new SetWork(items, counts, unjudged);
    }

    private record Gathered(String key, Message words, List<String> drills) {
        static Gathered of(String key, Message words) {
            return new Gathered(key, words, new ArrayList<>());
        }

        Item item() {
            return new Item(key, words, drills);
        }
    }

    /** All that could be worked. Sabre has lines of its own: they are asked for where the set has sabre drills. */
    private static List<Gathered> asked(Theme theme, List<Subject> drills, School school) {
        Set<Weapon> weapons = new LinkedHashSet<>();
        drills.forEach(drill -> weapons.add(drill.drill().weapon()));
        boolean sabre = weapons.contains(Weapon.SABRE);
        boolean thrusting = !sabre || weapons.contains(Weapon.FOIL) || weapons.contains(Weapon.EPEE);
        return switch (theme) {
            case FUNDAMENTALS ->
                school.fundamentals().stream()
                        .map(word -> Gathered.of(word, Message.plain(word)))
                        .toList();
            case LINES ->
                Stream.of(Line.values())
                        .filter(line -> line.height().isPresent() ? thrusting : sabre)
                        .map(line -> Gathered.of(key(line), Terms.of(line)))
                        .toList();
            case PARRIES ->
                Stream.of(Position.values())
                        .map(position -> Gathered.of(position.word(), Terms.of(position)))
                        .toList();
            case MEASURES ->
                Stream.of(Measure.values())
                        .map(measure ->
                                Gathered.of(measure.word(), Message.of(SetWork.class, "measure." + measure.word())))
                        .toList();
            case HANDS ->
                Stream.of(Hands.values())
                        .map(hands -> Gathered.of(hands.word(), Message.of(SetWork.class, "hands." + hands.word())))
                        .toList();
        };
    }

    private static Set<String> worked(Theme theme, Subject drill) {
        Set<String> keys = new LinkedHashSet<>();
        switch (theme) {
            case FUNDAMENTALS -> keys.addAll(drill.drill().worksOn());
            case LINES -> moves(drill).forEach(move -> line(move).ifPresent(line -> keys.add(key(line))));
            case PARRIES -> moves(drill).forEach(move -> parry(move).ifPresent(position -> keys.add(position.word())));
            case MEASURES ->
                drill.replay()
                        .counts()
                        .forEach(count ->
                                measure(count.begin().measure()).ifPresent(measure -> keys.add(measure.word())));
            case HANDS -> {
                if (drill.isPartnerDrill()) {
                    keys.add(drill.drill().hands().word());
                }
            }
        }
        return keys;
    }

    private static String key(Line line) {
        return ConstantName.hyphened(line);
    }

    private static List<Played> moves(Subject drill) {
        return drill.replay().counts().stream()
                .map(Count::moves)
                .flatMap(List::stream)
                .toList();
    }

    private static Optional<Line> line(Played played) {
        Side other = played.move().by().other();
        return played.move().action() instanceof Action.Strike
                ? played.after().attackOn(other).map(Attack::line).flatMap(line -> line.value())
                : Optional.empty();
    }

    private static Optional<Position> parry(Played played) {
        if (played.move().action() instanceof Action.Parry parry) {
            return parry.position();
        }
        boolean met = played.before().attackOn(played.move().by()).isPresent();
        return met && played.move().action() instanceof Action.Place place
                ? Optional.of(place.position())
                : Optional.empty();
    }

    private static Optional<Measure> measure(Range range) {
        for (Measure measure : Measure.values()) {
            Range whole = Range.of(measure);
            if (range.least() >= whole.least() && range.most() <= whole.most()) {
                return Optional.of(measure);
            }
        }
        return Optional.empty();
    }
}
