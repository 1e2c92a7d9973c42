package org.drillwright.read;

import java.time.Duration;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Language;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.model.SchoolFont;
import org.drillwright.model.SheetSize;
import org.drillwright.model.Weapon;
import org.drillwright.plan.roster.Habits;
import org.drillwright.table.DateOrder;
import org.drillwright.table.TableSettings;
import org.drillwright.table.TableWords;

/** Reads a folder's {@code school.yaml}. */
public final class SchoolReader {

    private SchoolReader() {}

    /** @param name the file's name as it is shown */
    public static Reading<ReadSchool> read(String name, byte[] bytes) {
        return NodeReader.reading(name, bytes, () -> FileKeys.of(shape()), nodes -> school(nodes));
    }

    private static ReadSchool school(NodeReader nodes) {
        MappingReader keys = nodes.root();
        School school = school(keys);
        Habits habits = HabitReader.habits(keys);
        TableSettings tables = tables(keys);
        keys.finish();
        return new ReadSchool(school, habits, tables, nodes.findings().file(), nodes.places());
    }

    /** What a file of settings may hold. */
    public static Shape.Group shape() {
        return ShapeRecorder.of(keys -> {
            var unusedSchool = school(keys);
            var unusedHabits = HabitReader.habits(keys);
            return tables(keys);
        });
    }

    /** How tables are to be read where they leave it open. */
    private static TableSettings tables(Keys keys) {
        return keys.group("tables", named -> {
                    TableSettings tables = new TableSettings(
                            named.choice("dates", List.of(DateOrder.values()), DateOrder::word),
                            named.group("columns", SchoolReader::columns).orElse(Map.of()));
                    named.finish();
                    return tables;
                })
                .orElse(TableSettings.NONE);
    }

    private static Map<String, String> columns(Keys keys) {
        Map<String, String> columns = new LinkedHashMap<>();
        TableWords.fields()
                .forEach(field ->
                        keys.text(field, ReadingLimits.SHORT_TEXT).ifPresent(heading -> columns.put(field, heading)));
        keys.finish();
        return columns;
    }

    private static School school(Keys keys) {
        School usual = School.DEFAULT;
        List<Level> levels = levels(keys);
        List<String> fundamentals = keys.texts("works-on", ReadingLimits.SHORT_TEXT);
        Optional<CardSize> card = keys.choice("card", List.of(CardSize.values()), CardSize::word);
        SheetSize sheet = keys.choice("sheet", List.of(SheetSize.values()), SheetSize::word)
                .orElse(usual.sheet());
        return new School(
                keys.text("name", ReadingLimits.SHORT_TEXT).orElse(usual.name()),
                levels,
                sets(keys, levels),
                gear(keys),
                words(keys),
                parries(keys),
                fundamentals.isEmpty() ? usual.fundamentals() : fundamentals,
                card.orElse(sheet.usualCard()),
                sheet,
                keys.choice("language", Language.all(), Language::word).orElse(usual.language()),
                font(keys),
                minutes(keys, usual.classLength()),
                keys.seconds("seconds-a-count").orElse(usual.count()));
    }

    /** One file for both cuts, or one for each; and files for letters that these lack. */
    private static Optional<SchoolFont> font(Keys keys) {
        return keys.textOrGroup(
                "font",
                ReadingLimits.SHORT_TEXT,
                file -> new SchoolFont(Optional.of(new SchoolFont.Cuts(file, file)), List.of()),
                SchoolReader::fonts);
    }

    private static SchoolFont fonts(Keys keys) {
        Optional<String> regular = keys.text("regular", ReadingLimits.SHORT_TEXT);
        Optional<String> bold = keys.text("bold", ReadingLimits.SHORT_TEXT);
        List<String> also = keys.texts("also", ReadingLimits.SHORT_TEXT);
        if (bold.isPresent()) {
            keys.need("regular");
        } else {
            keys.needOneOf(List.of("also", "regular"));
        }
        keys.finish();
        return new SchoolFont(regular.map(file -> new SchoolFont.Cuts(file, bold.orElse(file))), also);
    }

    private static Duration minutes(Keys keys, Duration usual) {
        int minutes = keys.wholeNumber("class-minutes", 1, 1000).orElse((int) usual.toMinutes());
        return Duration.ofMinutes(minutes);
    }

    private static List<Level> levels(Keys keys) {
        List<Level> levels = keys.groups("levels", ReadingLimits.ITEMS, SchoolReader::level);
        return levels.isEmpty() ? School.DEFAULT.levels() : levels;
    }

    private static Level level(Keys keys) {
        Level level = new Level(
                keys.needed("name", ReadingLimits.SHORT_TEXT),
                keys.choice("turns", List.of(Level.Turns.values()), Level.Turns::word)
                        .orElse(Level.Turns.JOINED),
                keys.choice("blades", List.of(Level.Blades.values()), Level.Blades::word)
                        .orElse(Level.Blades.BY_THE_COUNT));
        keys.finish();
        return level;
    }

    private static List<DrillSet> sets(Keys keys, List<Level> levels) {
        return keys.group(
                        "sets", named -> named.byName((sets, name) -> sets.group(name, set -> set(name, set, levels))))
                .map(sets -> List.copyOf(sets.values()))
                .orElse(List.of());
    }

    private static DrillSet set(String name, Keys keys, List<Level> levels) {
        List<String> names = levels.stream().map(Level::name).toList();
        Optional<String> level = keys.nameOfThisFile("level", names);
        Optional<Weapon> weapon = keys.choice("weapon", List.of(Weapon.values()), Weapon::word);
        Optional<String> tag = keys.text("tag", ReadingLimits.SHORT_TEXT);
        DrillSet set = new DrillSet(name, level, weapon, tag, keys.texts("drills", ReadingLimits.SHORT_TEXT));
        keys.needOneOf(List.of("level", "weapon", "tag", "drills"));
        keys.finish();
        return set;
    }

    private static Map<String, List<String>> gear(Keys keys) {
        return keys.group("gear", named -> named.byName(SchoolReader::gearOf)).orElse(Map.of());
    }

    private static Optional<List<String>> gearOf(Keys named, String name) {
        return Optional.of(named.texts(name, ReadingLimits.SHORT_TEXT));
    }

    private static Map<String, String> words(Keys keys) {
        return keys.group("words", SchoolReader::shortTexts).orElse(Map.of());
    }

    private static Map<String, String> shortTexts(Keys keys) {
        return keys.byName((named, name) -> named.text(name, ReadingLimits.SHORT_TEXT));
    }

    private static Map<Weapon, Map<String, String>> parries(Keys keys) {
        return keys.group("parries", SchoolReader::byWeapon).orElse(Map.of());
    }

    private static Map<Weapon, Map<String, String>> byWeapon(Keys weapons) {
        Map<Weapon, Map<String, String>> parries = new EnumMap<>(Weapon.class);
        for (Weapon weapon : Weapon.values()) {
            weapons.group(weapon.word(), SchoolReader::shortTexts).ifPresent(rows -> parries.put(weapon, rows));
        }
        weapons.finish();
        return parries;
    }
}
