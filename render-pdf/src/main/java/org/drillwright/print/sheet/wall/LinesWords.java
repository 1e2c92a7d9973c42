package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.Walk;
import org.drillwright.print.text.Styled;

/** What stands above two lines that walk. */
record LinesWords(Notice notice, PairingPlan pairs, LineRounds lines) {

    /** @param toKnow sentences that everybody should know */
    List<List<Styled>> paragraphs(List<String> toKnow) {
        List<List<Styled>> said = new ArrayList<>(List.of(rule(), find()));
        for (int at = 1; at < lines.walks().size(); at++) {
            said.add(changing(lines.walks().get(at - 1), lines.walks().get(at)));
        }
        said.add(read());
        said.add(joining());
        said.add(toKnow.stream().map(Notice::plain).toList());
        said.add(drills());
        return said;
    }

    private List<Styled> rule() {
        boolean several = pairs.rounds().stream()
                .filter(round -> pairs.isStepped(round.number()))
                .anyMatch(round -> !round.drill()
                        .equals(pairs.rounds().get(round.number() - 2).drill()));
        return List.of(
                Notice.bold(text(WallText.B_MOVES)),
                Notice.plain(text(WallText.TO_POST_ONE)
                        + (several ? " " + text(WallText.DRILL_CHANGES) : "")
                        + " "
                        + text(lines.byLines() ? WallText.A_LEADS : WallText.KNOWING_LEADS)));
    }

    private List<Styled> find() {
        return List.of(Notice.bold(text(WallText.FIND_POST)), Notice.plain(text(WallText.OPPOSITE)));
    }

    private String text(WallText word, Object... values) {
        return notice.wording().text(word, values);
    }

    private String rounds(List<Integer> numbers) {
        return Runs.named(WallText.AT_ROUND, WallText.AT_ROUNDS, numbers, notice.wording());
    }

    private List<Styled> changing(Walk before, Walk after) {
        List<String> changing = lines.rows().stream()
                .filter(row -> isOtherLine(row, lines.walks().indexOf(before)))
                .map(LineRounds.Row::name)
                .toList();
        String crossing = changing.isEmpty()
                ? text(WallText.CROSSING_NOBODY)
                : notice.wording().counted(WallText.CROSSING, changing.size(), String.join(", ", changing));
        return List.of(
                Notice.bold(text(WallText.AFTER_ROUND, before.to())),
                Notice.plain(text(
                        after.from() == after.to() ? WallText.POST_FOR_ROUND : WallText.POST_FOR_ROUNDS,
                        crossing,
                        LineRounds.numbers(after, notice.wording()))));
    }

    private static boolean isOtherLine(LineRounds.Row row, int forming) {
        String before = row.posts().get(forming);
        String after = row.posts().get(forming + 1);
        return before.length() > 1 && after.length() > 1 && before.charAt(0) != after.charAt(0);
    }

    /** Rounds that nobody walks. */
    private List<Styled> read() {
        Map<String, List<Integer>> read = new LinkedHashMap<>();
        pairs.rounds().stream()
                .skip(pairs.firstPlanned())
                .filter(round -> pairs.walk(round.number()).isEmpty())
                .forEach(round -> read.computeIfAbsent(round.drill(), drill -> new ArrayList<>())
                        .add(round.number()));
        List<Styled> said = new ArrayList<>();
        read.forEach((drill, rounds) -> {
            said.add(Notice.bold(rounds(rounds)));
            said.add(Notice.plain(text(WallText.NO_LINES, notice.title().apply(drill))));
        });
        return said;
    }

    private List<Styled> joining() {
        List<Styled> said = new ArrayList<>();
        boolean rests = lines.walks().stream().anyMatch(Walk::hasRest);
        if (rests && lines.joining().isEmpty()) {
            said.add(Notice.plain(text(WallText.RESTS)));
        }
        lines.joining().forEach((round, who) -> {
            if (said.isEmpty()) {
                said.add(Notice.plain(text(WallText.JOINS_ONCE)));
            }
            said.add(Notice.bold(text(WallText.AT_ROUND, round)));
            said.add(Notice.plain(who + "."));
        });
        return said;
    }

    private List<Styled> drills() {
        Map<String, List<Integer>> drills = new LinkedHashMap<>();
        for (Round round :
                pairs.rounds().subList(pairs.firstPlanned(), pairs.rounds().size())) {
            drills.computeIfAbsent(round.drill(), drill -> new ArrayList<>()).add(round.number());
        }
        List<Styled> words = new ArrayList<>();
        drills.forEach((drill, rounds) -> {
            int times = notice.repetitions().applyAsInt(drill);
            words.add(Notice.bold(rounds(rounds)));
            words.add(Notice.plain(notice.wording()
                    .counted(WallText.TIMES, times, notice.title().apply(drill))));
        });
        return words;
    }
}
