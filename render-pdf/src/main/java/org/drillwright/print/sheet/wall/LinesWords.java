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
record LinesWords(Notice notice, PairingPlan pairs, Lines lines) {

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
                Notice.bold("B moves one post towards the door when I say change; the last walks round behind line A"),
                Notice.plain("to post 1. A stays"
                        + (several ? ". This goes on when the drill changes. " : ". ")
                        + (lines.byLines() ? "A leads" : "Whoever knows the drill leads first; if both do, A leads")
                        + " first in odd rounds, B in even ones."));
    }

    private List<Styled> find() {
        return List.of(
                Notice.bold("Find your name: line and post."),
                Notice.plain("Opposite, at the same post, is your first partner."));
    }

    private List<Styled> changing(Walk before, Walk after) {
        List<String> changing = lines.rows().stream()
                .filter(row -> isOtherLine(row, lines.walks().indexOf(before)))
                .map(Lines.Row::name)
                .toList();
        return List.of(
                Notice.bold("After round " + before.to() + ":"),
                Notice.plain((changing.isEmpty()
                                ? "nobody changes lines"
                                : String.join(", ", changing) + (changing.size() == 1 ? " changes" : " change")
                                        + " lines")
                        + "; everyone goes to the post for " + Lines.rounds(after) + "."));
    }

    private static boolean isOtherLine(Lines.Row row, int forming) {
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
            said.add(Notice.bold(Runs.named("Round", rounds) + ":"));
            said.add(Notice.plain("no lines for " + notice.title().apply(drill) + "; read the other sheet."));
        });
        return said;
    }

    private List<Styled> joining() {
        List<Styled> said = new ArrayList<>();
        boolean rests = lines.walks().stream().anyMatch(Walk::hasRest);
        if (rests && lines.joining().isEmpty()) {
            said.add(Notice.plain("Whoever has nobody opposite rests for that round."));
        }
        lines.joining().forEach((round, who) -> {
            if (said.isEmpty()) {
                said.add(Notice.plain("* has nobody opposite once, joins a pair, then returns."));
            }
            said.add(Notice.bold("Round " + round + ":"));
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
            words.add(Notice.bold(Runs.named("Round", rounds) + ":"));
            words.add(Notice.plain(
                    notice.title().apply(drill) + ", " + times + (times == 1 ? " time" : " times") + " in each role."));
        });
        return words;
    }
}
