package org.drillwright.print.command.school;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.drillwright.model.DrillSet;
import org.drillwright.model.School;
import org.drillwright.model.SchoolFont;
import org.drillwright.plan.roster.OwnBlock;
import org.drillwright.plan.roster.Timing;
import org.drillwright.print.command.console.TextColumn;
import org.drillwright.print.command.printing.Count;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder;
import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;

/** The settings in force as a table: the key, its value, and where that comes from. */
final class SettingsTable {

    private static final int KEY = 16;
    private static final int VALUE = 40;

    private final SchoolFolder folder;
    private final School school;
    private final StringBuilder table = new StringBuilder();

    private SettingsTable(SchoolFolder folder) {
        this.folder = folder;
        this.school = folder.school();
    }

    static String of(SchoolFolder folder) {
        SettingsTable table = new SettingsTable(folder);
        table.table
                .append("The school in ")
                .append(folder.root())
                .append(" has ")
                .append(Count.of(folder.entries().size(), "drill"))
                .append(".\n\n");
        table.fill();
        return table.table.toString();
    }

    private void fill() {
        row("name", school.name().isEmpty() ? "(none)" : school.name());
        school.levels()
                .forEach(level -> item(
                        "levels",
                        school.levels().indexOf(level),
                        level.name() + ": turns " + level.turns().word() + ", blades "
                                + level.blades().word()));
        sets();
        map("gear", school.gear());
        row("works-on", String.join(", ", school.fundamentals()));
        map("words", school.words());
        row("parries", school.parries().isEmpty() ? "as built in" : "some rows replaced");
        row("card", school.card().word());
        row("sheet", school.sheet().word());
        row("language", school.language().word());
        row("font", school.font().map(SettingsTable::font).orElse("DejaVu Sans Condensed"));
        row("class-minutes", Long.toString(school.classLength().toMinutes()));
        row("seconds-a-count", seconds());
        habits();
    }

    private void habits() {
        row("timing", seconds(folder.habits().timing()));
        row(
                "hall",
                folder.habits()
                        .hall()
                        .map(hall -> hall.length() / 100.0 + " x " + hall.width() / 100.0 + " m")
                        .orElse("(none)"));
        blocks();
        row("initials", folder.habits().initials() ? "yes" : "no");
    }

    private void blocks() {
        List<OwnBlock> blocks = folder.habits().blocks();
        if (blocks.isEmpty()) {
            row("blocks", "(none)");
        }
        for (int at = 0; at < blocks.size(); at++) {
            OwnBlock block = blocks.get(at);
            item(
                    "blocks",
                    at,
                    block.name() + ": " + block.length().toMinutes() + " min, "
                            + block.place().word());
        }
    }

    private static String seconds(Timing timing) {
        return "seconds: opening " + timing.opening().toSeconds() + ", warm-up "
                + timing.warmUp().toSeconds() + ", closing " + timing.closing().toSeconds() + ", changeover "
                + timing.changeover().toSeconds() + ", swap " + timing.swap().toSeconds() + ", change "
                + timing.change().toSeconds() + ", reset " + timing.reset().toSeconds() + ", explain-new "
                + timing.explainNew().toSeconds() + ", explain-known "
                + timing.explainKnown().toSeconds();
    }

    private static String font(SchoolFont font) {
        return font.regular().equals(font.bold()) ? font.regular() : font.regular() + ", " + font.bold();
    }

    private String seconds() {
        return Double.toString(school.count().toMillis() / 1000.0).replaceFirst("\\.0$", "");
    }

    private void sets() {
        if (school.sets().isEmpty()) {
            row("sets", "(none; each level counts as one)");
        }
        for (DrillSet set : school.sets()) {
            keyed(
                    "sets",
                    set.name(),
                    set.isListed() ? Count.of(set.drills().size(), "drill") : "every drill" + named(set));
        }
    }

    private static String named(DrillSet set) {
        return set.level().map(level -> " of level " + level).orElse("")
                + set.weapon().map(weapon -> " for " + weapon.word()).orElse("")
                + set.tag().map(tag -> " with the tag " + tag).orElse("");
    }

    private void map(String key, Map<String, ?> values) {
        if (values.isEmpty()) {
            row(key, "(none)");
        }
        new TreeMap<>(values).forEach((name, value) -> keyed(key, name, plain(value)));
    }

    private static String plain(Object value) {
        return value instanceof List<?> list
                ? String.join(", ", list.stream().map(String::valueOf).toList())
                : String.valueOf(value);
    }

    private void row(String key, String value) {
        line(key, value, origin(FieldPath.of(key)));
    }

    private void item(String key, int at, String value) {
        line(at == 0 ? key : "", value, origin(FieldPath.of(key).item(at)));
    }

    private void keyed(String key, String name, String value) {
        line(key + " / " + name, value, origin(FieldPath.of(key).key(name)));
    }

    private void line(String key, String value, String origin) {
        List<String> lines = TextColumn.wrap(value, VALUE);
        boolean wide = key.length() > KEY;
        if (wide) {
            table.append(key).append('\n');
        }
        for (int at = 0; at < lines.size(); at++) {
            String left = at == 0 && !wide ? key : "";
            String right = at == 0 ? origin : "";
            table.append((left + " ".repeat(KEY - left.length()) + "  " + padded(lines.get(at)) + "  " + right)
                    .stripTrailing());
            table.append('\n');
        }
    }

    private static String padded(String value) {
        return value + " ".repeat(Math.max(0, VALUE - value.codePointCount(0, value.length())));
    }

    private String origin(FieldPath path) {
        return folder.settings()
                .flatMap(read -> read.places()
                        .field(path)
                        .map(field -> line(read.file(), field.key().start())))
                .orElse("default");
    }

    private static String line(SourceFile file, int offset) {
        return DrillFiles.SETTINGS + ", line " + file.position(offset).line();
    }
}
