package org.drillwright.read;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.TreeMap;
import org.drillwright.model.Drill;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;

/**
 * Writes a drill as a file that {@link DrillReader} reads back as that drill: keys in the order of the guide, texts plain
 * where that is safe and between double quotes where it isn't, absent values left out.
 */
public final class DrillWriter {

    private DrillWriter() {}

    public static String write(Drill drill) {
        YamlLines lines = new YamlLines();
        lines.text("title", drill.title());
        lines.text("level", drill.level());
        lines.text("form", drill.form().word());
        lines.text("weapon", drill.weapon().word());
        lines.text("hands", drill.hands().word());
        lines.list("works-on", drill.worksOn());
        lines.list("needs", drill.needs());
        lines.list("gear", drill.gear());
        lines.text("purpose", drill.purpose());
        lines.text("start", drill.start());
        lines.text("opening", drill.opening());
        steps(drill.steps(), lines);
        lines.text("closing", drill.closing());
        lines.text("repeat", Integer.toString(drill.repeat()));
        lines.text("swap", Boolean.toString(drill.swap()));
        drill.tempo().ifPresent(tempo -> lines.text("tempo", seconds(tempo)));
        lines.text("note", drill.note());
        lines.list("cautions", drill.cautions());
        drill.variantOf().ifPresent(id -> lines.text("variant-of", id));
        lines.list("tags", drill.tags());
        drill.revised().ifPresent(date -> lines.text("revised", date.toString()));
        if (!drill.accept().isEmpty()) {
            lines.key("accept");
            YamlLines accepted = lines.indented();
            new TreeMap<>(drill.accept()).forEach(accepted::text);
        }
        drill.language().ifPresent(language -> lines.text("language", language.word()));
        return lines.toString();
    }

    private static void steps(List<Step> steps, YamlLines lines) {
        if (steps.isEmpty()) {
            lines.emptyList("steps");
            return;
        }
        lines.key("steps");
        for (Step step : steps) {
            YamlLines count = lines.item();
            step.number().ifPresent(number -> count.text("number", Integer.toString(number)));
            count.text("call", step.call());
            step.leader().ifPresent(turn -> turn("leader", turn, count));
            step.follower().ifPresent(turn -> turn("follower", turn, count));
            count.text("distance", step.distance());
            count.text("safety", step.safety());
            count.text("note", step.note());
            count.endItem();
        }
    }

    private static void turn(String key, Turn turn, YamlLines count) {
        if (turn.means().isEmpty()) {
            count.text(key, turn.say());
        } else {
            count.key(key);
            YamlLines parts = count.indented();
            parts.text("say", turn.say());
            parts.text("means", turn.means());
        }
    }

    private static String seconds(Duration tempo) {
        return BigDecimal.valueOf(tempo.toMillis(), 3).stripTrailingZeros().toPlainString();
    }
}
