package org.drillwright.read;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Hands;
import org.drillwright.model.Language;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.model.Weapon;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;

/** Reads drill files; several threads may read with one. */
public final class DrillReader {

    private final School school;
    private final List<String> levels;
    private final KnownPaths paths = new KnownPaths();

    /** @param school whose levels and fundamentals the drill may name */
    public DrillReader(School school) {
        this.school = school;
        this.levels = school.levels().stream().map(Level::name).toList();
    }

    /**
     * Reads a drill from a file's bytes.
     *
     * @param id the file's name without its ending
     * @param name the file's name as it is shown
     */
    public Reading<ReadDrill> read(String id, String name, byte[] bytes) {
        FileText text = FileText.decode(name, bytes);
        Findings findings = new Findings(text.file());
        findings.addAll(text.findings());
        Optional<ReadDrill> drill = text.usable() ? read(id, text.file(), findings) : Optional.empty();
        return new Reading<>(drill, findings.list());
    }

    private Optional<ReadDrill> read(String id, SourceFile file, Findings findings) {
        return YamlDocument.compose(file, findings, () -> FileKeys.of(shape())).flatMap(document -> {
            NodeReader nodes = new NodeReader(document, findings, paths);
            Drill drill = drill(id, nodes.root());
            return nodes.isBroken() ? Optional.empty() : Optional.of(new ReadDrill(drill, file, nodes.places()));
        });
    }

    /** What a drill file may hold in this school. */
    public Shape.Group shape() {
        return ShapeRecorder.of(keys -> drill("", keys));
    }

    private Drill drill(String id, Keys keys) {
        Drill drill = new Drill(
                id,
                keys.dispensable("title", () -> keys.needed("title", ReadingLimits.SHORT_TEXT)),
                keys.dispensable("level", () -> level(keys)),
                keys.dispensable("form", () -> neededChoice(keys, "form", Form.values(), Form::word))
                        .orElse(Form.PARTNER),
                keys.dispensable("weapon", () -> neededChoice(keys, "weapon", Weapon.values(), Weapon::word))
                        .orElse(Weapon.NONE),
                keys.dispensable("hands", () -> keys.choice("hands", List.of(Hands.values()), Hands::word))
                        .orElse(Hands.SAME),
                keys.dispensable("works-on", () -> keys.names("works-on", school.fundamentals())),
                texts(keys, "needs", ReadingLimits.SHORT_TEXT),
                texts(keys, "gear", ReadingLimits.SHORT_TEXT),
                text(keys, "purpose", ReadingLimits.LINE_TEXT),
                keys.text("start", ReadingLimits.LINE_TEXT).orElse(""),
                keys.text("opening", ReadingLimits.LINE_TEXT).orElse(""),
                steps(keys),
                keys.text("closing", ReadingLimits.LINE_TEXT).orElse(""),
                keys.dispensable("repeat", () -> keys.wholeNumber("repeat", 1, 999))
                        .orElse(1),
                keys.dispensable("swap", () -> keys.yesOrNo("swap")).orElse(false),
                keys.dispensable("tempo", () -> keys.seconds("tempo")),
                text(keys, "note", ReadingLimits.LONG_TEXT),
                texts(keys, "cautions", ReadingLimits.LINE_TEXT),
                keys.dispensable("variant-of", () -> keys.text("variant-of", ReadingLimits.SHORT_TEXT)),
                texts(keys, "tags", ReadingLimits.SHORT_TEXT),
                keys.dispensable("revised", () -> keys.date("revised")),
                accept(keys),
                keys.dispensable("language", () -> keys.choice("language", Language.all(), Language::word)),
                Optional.empty());
        keys.finish();
        return drill;
    }

    private static <T> Optional<T> neededChoice(Keys keys, String key, T[] choices, Function<T, String> word) {
        keys.need(key);
        return keys.choice(key, List.of(choices), word);
    }

    private static String text(Keys keys, String key, int longest) {
        return keys.dispensable(key, () -> keys.text(key, longest)).orElse("");
    }

    private static List<String> texts(Keys keys, String key, int longest) {
        return keys.dispensable(key, () -> keys.texts(key, longest));
    }

    private String level(Keys keys) {
        keys.need("level");
        return keys.name("level", levels).orElse("");
    }

    private static List<Step> steps(Keys keys) {
        keys.need("steps");
        return keys.groups("steps", ReadingLimits.STEPS, DrillReader::step);
    }

    private static Step step(Keys keys) {
        Step step = new Step(
                keys.dispensable("number", () -> keys.wholeNumber("number", 0, 999)),
                text(keys, "call", ReadingLimits.SHORT_TEXT),
                turn(keys, "leader"),
                turn(keys, "follower"),
                keys.text("distance", ReadingLimits.SHORT_TEXT).orElse(""),
                keys.text("safety", ReadingLimits.LINE_TEXT).orElse(""),
                text(keys, "note", ReadingLimits.LONG_TEXT));
        keys.finish();
        return step;
    }

    private static Optional<Turn> turn(Keys keys, String key) {
        return keys.textOrGroup(key, ReadingLimits.LINE_TEXT, Turn::of, DrillReader::split);
    }

    private static Turn split(Keys parts) {
        Turn turn =
                new Turn(parts.needed("say", ReadingLimits.LINE_TEXT), parts.needed("means", ReadingLimits.LINE_TEXT));
        parts.finish();
        return turn;
    }

    private static Map<String, String> accept(Keys keys) {
        return keys.group(
                        "accept",
                        rules -> rules.<String>byName((named, rule) -> named.text(rule, ReadingLimits.LINE_TEXT)))
                .orElse(Map.of());
    }
}
