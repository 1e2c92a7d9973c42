package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Sign;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Styled;

/**
 * A drill of a lesson: its time at the left, then its title, what is done before the first count, the counts a line
 * each, leader and follower side by side, and what is to be minded.
 *
 * @param width in points
 */
record LessonDrill(HandType type, double width, HandWords words) {

    /** Where the words begin, behind the time. */
    static final double AXIS = 52;

    private static final double NUMBER = 13;
    private static final double DISC = 13;
    private static final double DISTANCE = 68;

    /** The same for words that are wider. */
    private static final double MOST_DISTANCE = 110;

    private static final double GAP = 4;

    /** The leader's share of what number, signs and distance leave. */
    private static final double LEADER = 0.607;

    /** So many counts hang together. */
    private static final int CHUNK = 12;

    /**
     * What stands beside the time.
     *
     * @param rounds such as {@code rounds 2 to 6}; may be empty
     */
    record Head(String time, String length, String title, String rounds) {}

    /** @param before what is done before the first count and after the last, each behind a bold word */
    List<Box> blocks(Head head, String work, List<Styled> before, Drill drill) {
        List<Box> caption = new ArrayList<>();
        caption.add(head(head));
        List<Styled> said = new ArrayList<>(List.of(new Styled(work + ".", Face.REGULAR)));
        said.addAll(before);
        caption.add(type.notes().paragraph(said, width - AXIS).moved(AXIS, 0));
        List<Box> blocks = new ArrayList<>();
        blocks.add(Box.stack(caption));
        for (int from = 0; from < drill.steps().size(); from += CHUNK) {
            blocks.add(counts(drill, from, Math.min(drill.steps().size(), from + CHUNK)));
        }
        blocks.add(minded(drill));
        blocks.add(Box.space(4));
        return blocks;
    }

    private Box head(Head head) {
        double top = 3;
        double rounds = type.words().width(Face.REGULAR, head.rounds());
        SetText title = type.drill().set(Face.BOLD, head.title(), AXIS, top, width - AXIS - rounds - GAP);
        double baseline = title.baselineOr(16);
        List<Node> nodes = new ArrayList<>();
        Type time = type.time().width(Face.BOLD, head.time()) <= AXIS - GAP / 2 ? type.time() : type.drill();
        nodes.add(line(time, Face.BOLD, head.time(), 0, baseline));
        nodes.add(title.as(Role.TITLE));
        if (!head.rounds().isEmpty()) {
            nodes.add(line(type.words(), Face.REGULAR, head.rounds(), width - rounds, baseline));
        }
        double under = baseline + Type.LEADING * type.notes().size();
        nodes.add(line(type.foot(), Face.REGULAR, words.text(HandWord.LASTS, head.length()), 0, under));
        return Box.of(top + title.height(), List.of(LineWeight.HEAVY.across(0, width, 0)), nodes);
    }

    private static Node line(Type type, Face face, String words, double x, double baseline) {
        return new Node.Words(Role.PARAGRAPH, List.of(type.line(face, words, x, baseline)));
    }

    /** What the distances of a drill take at the right: more than usual if a word of theirs is wider. */
    private double distances(Drill drill) {
        double widest = drill.steps().stream()
                .mapToDouble(step -> type.notes().widestWord(Face.REGULAR, step.distance()))
                .max()
                .orElse(0);
        return Math.max(DISTANCE, Math.min(widest, MOST_DISTANCE));
    }

    private Box counts(Drill drill, int from, int end) {
        double distances = distances(drill);
        boolean alone = drill.form() == Form.SOLO;
        return Box.stack(IntStream.range(from, end)
                        .mapToObj(at -> count(drill.steps().get(at), at, alone, distances))
                        .toList())
                .as(Role.TABLE)
                .padded(1);
    }

    private Box count(Step step, int at, boolean alone, double distances) {
        double axis = AXIS + NUMBER + DISC;
        double left = width - axis - DISC - distances - 2 * GAP;
        double other = axis + LEADER * left + GAP;
        List<Styled> called = new ArrayList<>();
        if (!step.call().isBlank()) {
            called.add(new Styled(step.call(), Face.BOLD));
        }
        step.leader().map(Turn::say).ifPresent(said -> called.add(new Styled(said, alone ? Face.BOLD : Face.REGULAR)));
        List<Styled> answered = step.follower().stream()
                .map(turn -> new Styled(turn.say(), Face.REGULAR))
                .toList();
        SetText number =
                type.words().set(Face.BOLD, String.valueOf(step.number().orElse(at + 1)), AXIS, 0, NUMBER + DISC);
        SetText leader = type.words().set(called, axis, 0, LEADER * left);
        SetText follower = type.words().set(answered, other + DISC, 0, (1 - LEADER) * left);
        SetText distance = distance(step.distance(), number.baselineOr(0), distances);
        double height =
                Math.max(Math.max(number.height(), distance.height()), Math.max(leader.height(), follower.height()));
        return Box.of(
                height,
                new Node.Group(
                        Role.ROW,
                        List.of(
                                number.as(Role.ROW_HEAD),
                                said(role(alone ? Label.CALLER : Label.LEADER), true, AXIS + NUMBER, leader),
                                said(role(alone ? Label.CLASS : Label.FOLLOWER), false, other, follower),
                                distance.as(Role.CELL))));
    }

    /** At the right end of the line, its first line level with the words. */
    private SetText distance(String cue, double baseline, double distances) {
        SetText set = type.notes().set(Face.REGULAR, cue, width - distances, 0, distances);
        double down = baseline - set.baselineOr(baseline);
        List<Mark.Text> lines = set.lines().stream()
                .map(line -> line.moved(distances - type.notes().width(line.face(), line.text()), down))
                .toList();
        return new SetText(set.height() + down, lines, set.broken());
    }

    private String role(Label label) {
        return words.labels().text(label) + ":";
    }

    private Node said(String role, boolean leads, double x, SetText words) {
        if (words.lines().isEmpty()) {
            return new Node.Words(Role.CELL, List.of());
        }
        double size = type.words().size();
        Sign.Place place = Sign.Place.before(type.words(), x, 0);
        return new Node.Group(
                Role.CELL,
                List.of(
                        new Node.Sign(role, leads ? Sign.leader(place, size) : Sign.follower(place, size)),
                        words.as(Role.PARAGRAPH)));
    }

    /** The safety notes of the counts, then the drill's cautions, behind one triangle. */
    private Box minded(Drill drill) {
        List<Styled> words = new ArrayList<>();
        for (int at = 0; at < drill.steps().size(); at++) {
            Step step = drill.steps().get(at);
            if (!step.safety().isBlank()) {
                words.add(new Styled(step.number().orElse(at + 1) + ":", Face.BOLD));
                words.add(new Styled(step.safety(), Face.REGULAR));
            }
        }
        drill.cautions().forEach(caution -> words.add(new Styled(caution, Face.REGULAR)));
        if (words.isEmpty()) {
            return Box.NONE;
        }
        SetText set = type.notes().set(words, AXIS + NUMBER, 0, width - AXIS - NUMBER);
        Sign.Place place = Sign.Place.before(type.notes(), AXIS, 0);
        return Box.of(
                set.height(),
                new Node.Sign(
                        role(Label.SAFETY), Sign.safety(place, type.words().size())),
                set.as(Role.PARAGRAPH));
    }
}
