package org.drillwright.print.command.live;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.model.Level;
import org.drillwright.read.ReadSchool;
import org.drillwright.read.ReadingRule;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.source.Field;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.Nearest;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/**
 * Tells a slip of the settings from one of a drill. Where a drill says a word that the settings do not have, the drill
 * cannot be read; but it is the settings that slipped if this drill could be read before they were saved, or if several
 * drills say the same level and the settings have one like it that no drill says.
 */
final class Blame {

    private static final String LEVEL_KEY = "level:";

    private static final Set<String> READING =
            Stream.of(ReadingRule.values()).map(ReadingRule::id).collect(Collectors.toUnmodifiableSet());

    private final SchoolFolder folder;
    private final Map<String, LiveDrill> before;
    private final Map<String, List<Finding>> moved = new LinkedHashMap<>();

    private Blame(SchoolFolder folder, Map<String, LiveDrill> before) {
        this.folder = folder;
        this.before = before;
    }

    /** @param before the sheets of the last reading, by their names */
    static Blame of(SchoolFolder folder, Map<String, LiveDrill> before) {
        Blame blame = new Blame(folder, before);
        if (folder.isUnjudged() || folder.settings().isPresent()) {
            blame.look();
        }
        return blame;
    }

    private void look() {
        Map<String, Long> sayers = folder.entries().stream()
                .flatMap(entry -> unknown(entry).stream().map(Blame::word).distinct())
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        for (Entry entry : folder.entries()) {
            List<Finding> slips = unknown(entry).stream()
                    .filter(finding -> folder.isUnjudged()
                            || couldBeRead(entry, finding)
                            || isMisspelled(finding, sayers.getOrDefault(word(finding), 0L)))
                    .toList();
            if (!slips.isEmpty()) {
                moved.put(entry.name(), slips);
            }
        }
    }

    private static List<Finding> unknown(Entry entry) {
        return entry.isWhole()
                ? List.of()
                : entry.findings().stream()
                        .filter(finding -> finding.rule().equals(ReadingRule.UNKNOWN_WORD.id()))
                        .filter(finding -> finding.severity() == Severity.ERROR)
                        .toList();
    }

    private static String word(Finding finding) {
        return finding.file().slice(finding.span());
    }

    /** With this very text, before the settings were saved. */
    private boolean couldBeRead(Entry entry, Finding finding) {
        return Optional.ofNullable(before.get(entry.name()))
                .filter(sheet -> sheet.text().equals(finding.file().text()))
                .filter(sheet -> sheet.isReadable() || sheet.isUnsettled())
                .isPresent();
    }

    private boolean isMisspelled(Finding finding, long sayers) {
        return sayers > 1 && isLevel(finding) && meant(word(finding)).isPresent();
    }

    private static boolean isLevel(Finding finding) {
        SourceFile file = finding.file();
        return file.slice(file.line(finding.position().line())).startsWith(LEVEL_KEY);
    }

    /** The level of the settings that a word may be: one that is like it and that no drill says. */
    private Optional<String> meant(String word) {
        Set<String> said = folder.entries().stream()
                .filter(Entry::isWhole)
                .flatMap(entry -> entry.subject().stream())
                .map(subject -> subject.drill().level())
                .collect(Collectors.toCollection(HashSet::new));
        return Nearest.to(
                word,
                folder.school().levels().stream()
                        .map(Level::name)
                        .filter(name -> !said.contains(name))
                        .toList());
    }

    /** Whether it is the settings' doing that a file cannot be read. */
    boolean isUnsettled(Entry entry) {
        return !entry.isWhole() && (folder.isUnjudged() ? isSilent(cleared(entry)) : moved.containsKey(entry.name()));
    }

    private static boolean isSilent(Entry entry) {
        return entry.findings().stream().noneMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /**
     * The file without what the settings are to blame for; what rules find in a drill whose level nobody knows is not its
     * doing either.
     */
    Entry cleared(Entry entry) {
        List<Finding> slips = moved.get(entry.name());
        if (slips == null) {
            return entry;
        }
        List<Finding> others = entry.findings().stream()
                .filter(finding -> READING.contains(finding.rule()) && !slips.contains(finding))
                .toList();
        return new Entry(entry.file(), entry.name(), entry.subject(), others);
    }

    /** What is found in the settings instead: one finding a word. */
    List<Finding> findings() {
        Optional<ReadSchool> settings = folder.settings();
        if (settings.isEmpty()) {
            return List.of();
        }
        Map<String, Long> words = moved.values().stream()
                .flatMap(slips -> slips.stream().map(Blame::word).distinct())
                .collect(Collectors.groupingBy(Function.identity(), LinkedHashMap::new, Collectors.counting()));
        return words.entrySet().stream()
                .map(slip -> finding(settings.get(), slip.getKey(), slip.getValue()))
                .toList();
    }

    private Finding finding(ReadSchool settings, String word, long drills) {
        Optional<String> meant = meant(word);
        Span span = meant.flatMap(level -> place(settings, level)).orElse(Span.at(0));
        return new Finding(
                ReadingRule.UNKNOWN_WORD.id(),
                Severity.ERROR,
                settings.file(),
                span,
                Message.counted(Blame.class, "blame.unknown", drills, word),
                meant.map(level -> Message.of(Blame.class, "blame.meant", level, word))
                        .orElse(Message.of(Blame.class, "blame.write")));
    }

    private static Optional<Span> place(ReadSchool settings, String level) {
        List<Level> levels = settings.school().levels();
        for (int at = 0; at < levels.size(); at++) {
            if (levels.get(at).name().equals(level)) {
                return settings.places()
                        .field(FieldPath.of("levels").item(at).key("name"))
                        .map(Field::value);
            }
        }
        return Optional.empty();
    }
}
