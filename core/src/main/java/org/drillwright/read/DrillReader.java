package org.drillwright.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Hands;
import org.drillwright.model.School;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.model.Weapon;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;

/** Reads a drill file. */
public final class DrillReader {

    private final School school;

    /** @param school whose levels and fundamentals the drill may name */
    public DrillReader(School school) {
        this.school = school;
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
            NodeReader nodes = new NodeReader(document, findings);
            Drill drill = drill(id, nodes.root());
            return new ReadDrill(drill, file, nodes.places());
        });
    }

    private Drill drill(String id, MappingReader keys) {
        String title = keys.needed("title", ReadingLimits.SHORT_TEXT);
        String level = level(keys);
        Optional<Form> form = keys.choice("form", List.of(Form.values()), Form::word);
        if (!keys.has("form")) {
            keys.missing("form");
        }
        Optional<Weapon> weapon = keys.choice("weapon", List.of(Weapon.values()), Weapon::word);
        if (!keys.has("weapon")) {
            keys.missing("weapon");
        }
        Drill drill = new Drill(
                id,
                title,
                level,
                form.orElse(Form.PARTNER),
                weapon.orElse(Weapon.NONE),
                keys.choice("hands", List.of(Hands.values()), Hands::word).orElse(Hands.SAME),
                worksOn(keys),
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

    private String level(MappingReader keys) {
        String level = keys.needed("level", ReadingLimits.SHORT_TEXT);
        if (!level.isEmpty() && school.level(level).isEmpty()) {
            List<String> known = school.levels().stream().map(one -> one.name()).toList();
            keys.unknownWord(keys.path().key("level"), level, known);
        }
        return level;
    }

    private List<String> worksOn(MappingReader keys) {
        List<String> worksOn = keys.texts("works-on", ReadingLimits.SHORT_TEXT);
        for (int at = 0; at < worksOn.size(); at++) {
            if (!school.fundamentals().contains(worksOn.get(at))) {
                keys.unknownWord(keys.path().key("works-on").item(at), worksOn.get(at), school.fundamentals());
            }
        }
        return worksOn;
    }

    private List<Step> steps(MappingReader keys) {
        if (!keys.has("steps")) {
            keys.missing("steps");
        }
        return keys.mappings("steps", ReadingLimits.STEPS, DrillReader::step);
    }

    private static Step step(MappingReader keys) {
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

    private static Optional<Turn> turn(MappingReader keys, String key) {
        Optional<MappingReader> split = keys.mappingIfThere(key);
        if (split.isEmpty()) {
            return keys.text(key, ReadingLimits.LINE_TEXT).map(Turn::of);
        }
        MappingReader parts = split.get();
        Turn turn =
                new Turn(parts.needed("say", ReadingLimits.LINE_TEXT), parts.needed("means", ReadingLimits.LINE_TEXT));
        parts.finish();
        return Optional.of(turn);
    }

    private static Map<String, String> accept(MappingReader keys) {
        Map<String, String> accepted = new HashMap<>();
        keys.mapping("accept").ifPresent(rules -> {
            for (String rule : rules.keys()) {
                rules.text(rule, ReadingLimits.LINE_TEXT).ifPresent(reason -> accepted.put(rule, reason));
            }
        });
        return accepted;
    }
}
