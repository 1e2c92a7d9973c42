package org.drillwright.read;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.CardSize;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Language;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.model.SchoolFont;
import org.drillwright.model.SheetSize;
import org.drillwright.model.Weapon;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;

/** Reads a folder's {@code school.yaml}. */
public final class SchoolReader {

    private SchoolReader() {}

    /** @param name the file's name as it is shown */
    public static Reading<ReadSchool> read(String name, byte[] bytes) {
        FileText text = FileText.decode(name, bytes);
        Findings findings = new Findings(text.file());
        findings.addAll(text.findings());
        Optional<ReadSchool> school = text.usable() ? read(text.file(), findings) : Optional.empty();
        return new Reading<>(findings.hasError() ? Optional.empty() : school, findings.list());
    }

    private static Optional<ReadSchool> read(SourceFile file, Findings findings) {
        return YamlDocument.compose(file, findings).map(document -> {
            NodeReader nodes = new NodeReader(document, findings);
            School school = school(nodes.root());
            return new ReadSchool(school, file, nodes.places());
        });
    }

    private static School school(MappingReader keys) {
        School usual = School.DEFAULT;
        List<Level> levels = levels(keys);
        List<String> fundamentals = keys.texts("works-on", ReadingLimits.SHORT_TEXT);
        School school = new School(
                keys.text("name", ReadingLimits.SHORT_TEXT).orElse(usual.name()),
                levels,
                sets(keys, levels),
                gear(keys),
                words(keys),
                parries(keys),
                fundamentals.isEmpty() ? usual.fundamentals() : fundamentals,
                keys.choice("card", List.of(CardSize.values()), CardSize::word).orElse(usual.card()),
                keys.choice("sheet", List.of(SheetSize.values()), SheetSize::word)
                        .orElse(usual.sheet()),
                keys.choice("language", List.of(Language.values()), Language::word)
                        .orElse(usual.language()),
                font(keys),
                minutes(keys, usual.classLength()),
                keys.seconds("seconds-a-count").orElse(usual.count()));
        keys.finish();
        return school;
    }

    /** One file for both cuts, or one for each. */
    private static Optional<SchoolFont> font(MappingReader keys) {
        Optional<MappingReader> cuts = keys.mappingIfThere("font");
        if (cuts.isEmpty()) {
            return keys.text("font", ReadingLimits.SHORT_TEXT).map(file -> new SchoolFont(file, file));
        }
        String regular = cuts.get().needed("regular", ReadingLimits.SHORT_TEXT);
        String bold = cuts.get().text("bold", ReadingLimits.SHORT_TEXT).orElse(regular);
        cuts.get().finish();
        return Optional.of(new SchoolFont(regular, bold));
    }

    private static Duration minutes(MappingReader keys, Duration usual) {
        int minutes = keys.wholeNumber("class-minutes", 1, 1000).orElse((int) usual.toMinutes());
        return Duration.ofMinutes(minutes);
    }

    private static List<Level> levels(MappingReader keys) {
        List<Level> levels = keys.mappings("levels", ReadingLimits.ITEMS, SchoolReader::level);
        return levels.isEmpty() ? School.DEFAULT.levels() : levels;
    }

    private static Level level(MappingReader keys) {
        Level level = new Level(
                keys.needed("name", ReadingLimits.SHORT_TEXT),
                keys.choice("turns", List.of(Level.Turns.values()), Level.Turns::word)
                        .orElse(Level.Turns.JOINED),
                keys.choice("blades", List.of(Level.Blades.values()), Level.Blades::word)
                        .orElse(Level.Blades.BY_THE_COUNT));
        keys.finish();
        return level;
    }

    private static List<DrillSet> sets(MappingReader keys, List<Level> levels) {
        List<DrillSet> sets = new ArrayList<>();
        keys.mapping("sets").ifPresent(named -> {
            for (String name : named.keys()) {
                named.mapping(name).ifPresent(set -> sets.add(set(name, set, levels)));
            }
        });
        return sets;
    }

    private static DrillSet set(String name, MappingReader keys, List<Level> levels) {
        List<String> names = levels.stream().map(Level::name).toList();
        Optional<String> level = keys.choice("level", names, word -> word);
        Optional<Weapon> weapon = keys.choice("weapon", List.of(Weapon.values()), Weapon::word);
        Optional<String> tag = keys.text("tag", ReadingLimits.SHORT_TEXT);
        DrillSet set = new DrillSet(name, level, weapon, tag, keys.texts("drills", ReadingLimits.SHORT_TEXT));
        if (Stream.of("level", "weapon", "tag", "drills").noneMatch(keys::has)) {
            keys.missing("drills");
        }
        keys.finish();
        return set;
    }

    private static Map<String, List<String>> gear(MappingReader keys) {
        Map<String, List<String>> gear = new HashMap<>();
        keys.mapping("gear").ifPresent(named -> {
            for (String name : named.keys()) {
                gear.put(name, named.texts(name, ReadingLimits.SHORT_TEXT));
            }
        });
        return gear;
    }

    private static Map<String, String> words(MappingReader keys) {
        Map<String, String> words = new HashMap<>();
        keys.mapping("words").ifPresent(named -> {
            for (String form : named.keys()) {
                named.text(form, ReadingLimits.SHORT_TEXT).ifPresent(term -> words.put(form, term));
            }
        });
        return words;
    }

    private static Map<Weapon, Map<String, String>> parries(MappingReader keys) {
        Map<Weapon, Map<String, String>> parries = new HashMap<>();
        keys.mapping("parries").ifPresent(weapons -> {
            for (Weapon weapon : Weapon.values()) {
                weapons.mapping(weapon.word()).ifPresent(rows -> parries.put(weapon, rows(rows)));
            }
            weapons.finish();
        });
        return parries;
    }

    private static Map<String, String> rows(MappingReader rows) {
        Map<String, String> lines = new HashMap<>();
        for (String position : rows.keys()) {
            rows.text(position, ReadingLimits.SHORT_TEXT).ifPresent(line -> lines.put(position, line));
        }
        return lines;
    }
}
