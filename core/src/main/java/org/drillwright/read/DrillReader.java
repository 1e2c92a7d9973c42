package org.drillwright.read;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Hands;
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
        return new Reading<>(findings.hasError() ? Optional.empty() : drill, findings.list());
    }

    private Optional<ReadDrill> read(String id, SourceFile file, Findings findings) {
        return YamlDocument.compose(file, findings).map(document -> {
            NodeReader nodes = new NodeReader(document, findings, paths);
            Drill drill = drill(id, nodes.root());
            return new ReadDrill(drill, file, nodes.places());
        });
    }

    /** What a drill file may hold in this school. */
    public Shape.Group shape() {
        return ShapeRecorder.of(keys -> drill("", keys));
    }

    private Drill drill(String id, Keys keys) {
        String title = keys.needed("title", ReadingLimits.SHORT_TEXT);
        String level = level(keys);
        keys.need("form");
        Optional<Form> form = keys.choice("form", List.of(Form.values()), Form::word);
        keys.need("weapon");
        Optional<Weapon> weapon = keys.choice("weapon", List.of(Weapon.values()), Weapon::word);
        Drill drill = new Drill(
                id,
                title,
                level,
                form.orElse(Form.PARTNER),
                weapon.orElse(Weapon.NONE),
                keys.choice("hands", List.of(Hands.values()), Hands::word).orElse(Hands.SAME),
                keys.names("works-on", school.fundamentals()),
                keys.texts("needs", ReadingLimits.SHORT_TEXT),
                keys.texts("gear", ReadingLimits.SHORT_TEXT),
                keys.text("purpose", ReadingLimits.LINE_TEXT).orElse(""),
                keys.text("start", ReadingLimits.LINE_TEXT).orElse(""),
                keys.text("opening", ReadingLimits.LINE_TEXT).orElse(""),
                steps(keys),
                keys.text("closing", ReadingLimits.LINE_TEXT).orElse(""),
                keys.wholeNumber("repeat", 1, 999).orElse(1),
                keys.yesOrNo("swap").orElse(false),
                keys.seconds("tempo"),
                keys.text("note", ReadingLimits.LONG_TEXT).orElse(""),
                keys.texts("cautions", ReadingLimits.LINE_TEXT),
                keys.text("variant-of", ReadingLimits.SHORT_TEXT),
                keys.texts("tags", ReadingLimits.SHORT_TEXT),
                keys.date("revised"),
                accept(keys));
        keys.finish();
        return drill;
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
                keys.wholeNumber("number", 0, 999),
                keys.text("call", ReadingLimits.SHORT_TEXT).orElse(""),
                turn(keys, "leader"),
                turn(keys, "follower"),
                keys.text("distance", ReadingLimits.SHORT_TEXT).orElse(""),
                keys.text("safety", ReadingLimits.LINE_TEXT).orElse(""),
                keys.text("note", ReadingLimits.LONG_TEXT).orElse(""));
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
