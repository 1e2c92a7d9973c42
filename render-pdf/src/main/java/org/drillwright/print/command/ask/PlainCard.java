package org.drillwright.print.command.ask;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.School;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.print.command.console.TextColumn;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;

/** A drill's card as plain text. */
final class PlainCard {

    private static final int INDENT = 5;

    private final Labels labels;
    private final StringBuilder text = new StringBuilder();

    private PlainCard(Labels labels) {
        this.labels = labels;
    }

    static String of(Drill drill, School school) {
        PlainCard card = new PlainCard(Labels.in(school.language()));
        card.write(drill, school.gearOf(drill));
        return card.text.toString();
    }

    private void write(Drill drill, List<String> gear) {
        text.append('\n').append(drill.title()).append('\n');
        text.append("-".repeat(Math.min(TextColumn.WIDTH, drill.title().length())))
                .append('\n');
        text.append(drill.level())
                .append(" · ")
                .append(drill.weapon().word())
                .append(" · ")
                .append(drill.form().word())
                .append('\n');
        part("", Label.GEAR, String.join(", ", gear));
        part("", Label.OPENING, drill.opening());
        part("", Label.START, drill.start());
        boolean solo = drill.form() == Form.SOLO;
        for (int at = 0; at < drill.steps().size(); at++) {
            Step step = drill.steps().get(at);
            String number = String.valueOf(step.number().orElse(at + 1));
            text.append('\n');
            part(number, solo ? Label.CALLER : Label.LEADER, said(step.leader()));
            part("", solo ? Label.CLASS : Label.FOLLOWER, said(step.follower()));
            part("", Label.DISTANCE, step.distance());
            part("", Label.SAFETY, step.safety());
        }
        text.append('\n');
        part("", Label.CLOSING, drill.closing());
        drill.cautions().forEach(caution -> part("", Label.CAUTION, caution));
    }

    private static String said(Optional<Turn> turn) {
        return turn.map(Turn::say).orElse("—");
    }

    private void part(String number, Label label, String words) {
        if (words.isBlank()) {
            return;
        }
        List<String> lines = TextColumn.wrap(labels.text(label) + ": " + words, TextColumn.WIDTH - INDENT);
        for (int at = 0; at < lines.size(); at++) {
            String left = at == 0 ? number : "";
            text.append(left)
                    .append(" ".repeat(Math.max(1, INDENT - left.length())))
                    .append(lines.get(at))
                    .append('\n');
        }
    }
}
