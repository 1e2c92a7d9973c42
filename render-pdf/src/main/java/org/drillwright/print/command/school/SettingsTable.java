package org.drillwright.print.command.school;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.drillwright.model.DrillSet;
import org.drillwright.model.School;
import org.drillwright.model.SchoolFont;
import org.drillwright.plan.roster.OwnBlock;
import org.drillwright.plan.roster.Timing;
import org.drillwright.print.command.console.TextColumn;
import org.drillwright.print.command.printing.CountedNoun;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder;
import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** The settings in force as a table: the key, its value, and where that comes from. */
final class SettingsTable {

    private static final String OWN_FONT = "DejaVu Sans Condensed";
    private static final int KEY = 16;
    private static final int VALUE = 40;

    private final SchoolFolder folder;
    private final School school;
    private final Locale language;
    private final StringBuilder table = new StringBuilder();

    private SettingsTable(SchoolFolder folder, Locale language) {
        this.language = language;
        this.folder = folder;
        this.school = folder.school();
    }

    static String of(SchoolFolder folder, Locale language) {
        SettingsTable table = new SettingsTable(folder, language);
        table.table
                .append(Message.of(
                                SettingsTable.class,
                                "settings-table.the.school.in",
                                folder.root(),
                                CountedNoun.of(folder.entries().size(), "drill"))
                        .in(language))
                .append("\n\n");
        table.fill();
        return table.table.toString();
    }

    private void fill() {
        row("name", school.name().isEmpty() ? said("settings-table.none") : school.name());
        school.levels()
                .forEach(level -> item(
                        "levels",
                        school.levels().indexOf(level),
                        Message.of(
                                        SettingsTable.class,
                                        "settings-table.turns.blades",
                                        level.name(),
                                        level.turns().word(),
                                        level.blades().word())
                                .in(language)));
        sets();
        map("gear", school.gear());
        row("works-on", String.join(", ", school.fundamentals()));
        map("words", school.words());
        row(
                "parries",
                school.parries().isEmpty()
                        ? said("settings-table.as.built.in")
                        : said("settings-table.some.rows.replaced"));
        row("card", school.card().word());
        row("sheet", school.sheet().word());
        row("language", school.language().word());
        row("font", school.font().map(SettingsTable::font).orElse(OWN_FONT));
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
                        .orElse(said("settings-table.none")));
        blocks();
        row("initials", folder.habits().initials() ? "yes" : "no");
    }

    private void blocks() {
        List<OwnBlock> blocks = folder.habits().blocks();
        if (blocks.isEmpty()) {
            row("blocks", said("settings-table.none"));
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

    private String seconds(Timing timing) {
        return Message.of(
                        SettingsTable.class,
                        "settings-table.seconds.opening.warmup.closing",
                        timing.opening().toSeconds(),
                        timing.warmUp().toSeconds(),
                        timing.closing().toSeconds(),
                        timing.changeover().toSeconds(),
                        timing.swap().toSeconds(),
                        timing.change().toSeconds(),
                        timing.reset().toSeconds(),
                        timing.explainNew().toSeconds(),
                        timing.explainKnown().toSeconds())
                .in(language);
    }

    private static String font(SchoolFont font) {
        List<String> files = new ArrayList<>();
        font.cuts()
                .ifPresentOrElse(cuts -> files.addAll(List.of(cuts.regular(), cuts.bold())), () -> files.add(OWN_FONT));
        files.addAll(font.also());
        return String.join(", ", new LinkedHashSet<>(files));
    }

    private String seconds() {
        return Double.toString(school.count().toMillis() / 1000.0).replaceFirst("\\.0$", "");
    }

    private void sets() {
        if (school.sets().isEmpty()) {
            row("sets", said("settings-table.none.each.level.counts"));
        }
        for (DrillSet set : school.sets()) {
            keyed(
                    "sets",
                    set.name(),
                    (set.isListed() ? CountedNoun.of(set.drills().size(), "drill") : every(set)).in(language));
        }
    }

    private static Message every(DrillSet set) {
        List<Message> which = new ArrayList<>();
        set.level().ifPresent(level -> which.add(Message.of(SettingsTable.class, "settings-table.of.level", level)));
        set.weapon()
                .ifPresent(weapon ->
                        which.add(Message.of(SettingsTable.class, "settings-table.for.weapon", Terms.of(weapon))));
        set.tag().ifPresent(tag -> which.add(Message.of(SettingsTable.class, "settings-table.with.the.tag", tag)));
        Message every = Message.of(SettingsTable.class, "settings-table.every.drill");
        return which.stream().reduce(every, Message::then);
    }

    private String said(String key) {
        return Message.of(SettingsTable.class, key).in(language);
    }

    private void map(String key, Map<String, ?> values) {
        if (values.isEmpty()) {
            row(key, said("settings-table.none"));
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
