package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.rounds.Method;
import org.drillwright.plan.walk.Forming;
import org.drillwright.plan.walk.Obstacle;
import org.drillwright.plan.walk.Walked;
import org.drillwright.record.History;

/** Says how people change over. */
final class WalkWords {

    private final PairingRequest request;
    private final Walked walked;

    WalkWords(PairingRequest request, Walked walked) {
        this.request = request;
        this.walked = walked;
    }

    /** @param rounds all of them, those already played first */
    List<String> sentences(List<Round> rounds) {
        if (request.open().size() < 2) {
            return List.of();
        }
        if (walked.solution().method() == Method.RING) {
            return ring(walked.formings().get(0));
        }
        List<String> said = new ArrayList<>();
        walked.obstacles().forEach(obstacle -> said.add(obstacle(obstacle)));
        said.addAll(of(rounds, RoundMaker.walks(request, walked)));
        if (walked.formings().isEmpty()
                && walked.obstacles().size()
                        < request.open().stream().distinct().count()) {
            said.add("At each change everyone reads the sheet"
                    + (request.movement() == Movement.WALK && walked.isBeaten()
                            ? ": if the lines walked, more pairs would meet again."
                            : "."));
        }
        return said;
    }

    private List<String> ring(Forming ring) {
        String still = ring.stays().stream()
                .map(student -> request.students().get(student).name())
                .collect(Collectors.joining(", "));
        return List.of("Stand still: " + still + ".", "All the others move one place on round the ring.");
    }

    /** Only that drill is read from the sheet. */
    private String obstacle(Obstacle obstacle) {
        String drill = request.open().get(obstacle.from());
        int together = obstacle.together().size();
        int others = request.students().size() - together;
        return drill + ": no forming, everyone reads the sheet. "
                + switch (obstacle.why()) {
                    case TOO_MANY_NEW -> "So many are new to it that some of them have to work together.";
                    case ONE_LINE ->
                        together + " have to be in one line, as they are new to it or kept apart: the other "
                                + others
                                + (obstacle.helpers() == 0 ? "" : " and the " + obstacle.helpers() + " who can help")
                                + " don't fill the second line.";
                    case UNEVEN ->
                        "Those who have to be in one line, as they are new to it or kept apart, can't be split"
                                + " into two lines of the same length.";
                    case REST -> "Whoever rests would have to join a pair, but may not join any.";
                };
    }

    /** How two lines change over, forming by forming; the rule comes last. */
    static List<String> of(List<Round> rounds, List<Walk> walks) {
        List<String> said = new ArrayList<>();
        for (int at = 0; at < walks.size(); at++) {
            Walk walk = walks.get(at);
            Optional<Walk> before = at == 0 ? Optional.empty() : Optional.of(walks.get(at - 1));
            before.ifPresent(one -> said.add(changing(one, walk)));
            boolean all = walks.size() == 1 && walk.to() - walk.from() + 1 == rounds.size();
            String when = all
                    ? "Line A stays"
                    : (walk.from() == walk.to() ? "Round " + walk.from() : "Rounds " + walk.from() + " to " + walk.to())
                            + ": line A stays";
            said.add(when + ", from post 1 onwards: " + listed(walk.stays()) + ".");
            said.add("Line B begins opposite, from post 1 onwards: " + listed(walk.moves()) + ".");
        }
        if (walks.stream().anyMatch(Walk::hasRest)) {
            said.add(rest(rounds, walks));
        }
        if (!walks.isEmpty()) {
            said.add(rule(rounds, walks));
        }
        return said;
    }

    private static String rule(List<Round> rounds, List<Walk> walks) {
        boolean several = walks.stream()
                .anyMatch(walk -> IntStream.range(walk.from(), walk.to())
                        .anyMatch(round -> !rounds.get(round)
                                .drill()
                                .equals(rounds.get(round - 1).drill())));
        return "At each change line B moves one post up, from post 1 to post 2 and so on"
                + (several ? ", even when the drill changes" : "")
                + "; whoever leaves the last post walks round behind line A to post 1.";
    }

    private static String changing(Walk before, Walk after) {
        List<String> changing = Walk.changing(before, after);
        return "After round " + before.to() + " "
                + (changing.isEmpty() ? "nobody changes lines" : listed(changing) + " change lines")
                + "; everyone finds their new post.";
    }

    /** Whoever stands before nobody joins a pair in a three, or rests. */
    private static String rest(List<Round> rounds, List<Walk> walks) {
        boolean joins = rounds.stream()
                .filter(round -> walks.stream().anyMatch(walk -> walk.holds(round.number())))
                .flatMap(round -> round.groups().stream())
                .anyMatch(group -> group.kind() == Group.Kind.THREE);
        return "Whoever has nobody opposite "
                + (joins ? "joins a pair as shown on the sheet, then returns." : "rests for that round.");
    }

    private static String listed(List<String> names) {
        return names.stream()
                .map(name ->
                        name.equals(Walk.REST) ? "nobody" : name.equals(History.INSTRUCTOR) ? "the instructor" : name)
                .collect(Collectors.joining(", "));
    }
}
