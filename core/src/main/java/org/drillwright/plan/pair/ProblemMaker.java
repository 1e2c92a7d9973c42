package org.drillwright.plan.pair;

import java.time.LocalDate;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.drillwright.model.Hands;
import org.drillwright.plan.roster.Apart;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.plan.rounds.Problem;
import org.drillwright.register.Entry;

/** Turns a request into numbers: who may meet, and what each meeting costs. */
final class ProblemMaker {

    /** A pair of the last class costs most; pairs of four classes ago and more all cost the same. */
    private static final int RECENT = 4;

    private static final int MOST_PAST = 9;
    private static final int MOST_TURNS = 9;
    private static final int MOST_LEVELS = 3;
    private static final int MOST_GAP = 99;

    private final PairingRequest request;
    private final List<Person> students;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Problem problem;

    private ProblemMaker(PairingRequest request) {
        this.request = request;
        this.students = request.students();
        for (Person student : students) {
            numbers.put(student.name(), numbers.size());
        }
        for (String helper : request.helpers()) {
            numbers.put(helper, numbers.size());
        }
        this.problem = new Problem(
                students.size(),
                request.helpers().size(),
                request.open().stream().map(this::novices).toList());
        problem.ways(
                request.ways().threes(),
                request.ways().bothNew(),
                request.ways().eyes());
    }

    static Problem of(PairingRequest request) {
        ProblemMaker maker = new ProblemMaker(request);
        maker.apart();
        maker.past();
        maker.turns();
        maker.played();
        maker.likeness();
        return maker.problem;
    }

    private BitSet novices(String drill) {
        BitSet novices = new BitSet();
        for (int at = 0; at < students.size() && request.mode() == Mode.LEARNING; at++) {
            novices.set(at, request.isNew(students.get(at).name(), drill));
        }
        return novices;
    }

    private Optional<Integer> number(String name) {
        return Optional.ofNullable(numbers.get(name));
    }

    private void apart() {
        for (Apart pair : request.apart()) {
            number(pair.one()).ifPresent(one -> number(pair.other()).ifPresent(other -> problem.apart(one, other)));
        }
    }

    private void past() {
        List<LocalDate> days = request.history().meetings().stream()
                .map(Entry::date)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
        int[][] past = new int[students.size()][students.size()];
        for (Entry entry : request.history().meetings()) {
            Optional<Integer> one = number(entry.person()).filter(problem::isStudent);
            Optional<Integer> other = number(entry.with()).filter(problem::isStudent);
            if (one.isPresent() && other.isPresent()) {
                int low = Math.min(one.get(), other.get());
                int high = Math.max(one.get(), other.get());
                past[low][high] += Math.max(1, RECENT - days.indexOf(entry.date()));
            }
        }
        forEachPair((one, other) -> problem.cost(Objective.PAST, one, other, Math.min(MOST_PAST, past[one][other])));
    }

    private void turns() {
        List<Integer> turns = new TurnsHad(request.history(), request.helpers()).of(students);
        for (int at = 0; at < students.size(); at++) {
            int had = Math.min(MOST_TURNS, turns.get(at));
            String name = students.get(at).name();
            problem.had(Objective.TURNS, at, had + played(name, group -> group.kind() == Group.Kind.HELPED))
                    .had(Objective.BLANKS, at, played(name, group -> group.kind() == Group.Kind.SOLO))
                    .had(Objective.THREES, at, played(name, group -> isThird(name, group)))
                    .had(Objective.WATCHED, at, played(name, group -> isWatched(name, group)));
        }
    }

    private static boolean isThird(String name, Group group) {
        return group.people().size() == 3 && group.people().get(2).equals(name);
    }

    private static boolean isWatched(String name, Group group) {
        return (group.eyes().isPresent() || group.kind() == Group.Kind.BOTH_NEW) && !isThird(name, group);
    }

    private int played(String name, Predicate<Group> kind) {
        return (int) request.played().stream()
                .flatMap(round -> round.groupOf(name).stream())
                .filter(kind)
                .count();
    }

    private void played() {
        forEachPair((one, other) -> problem.met(one, other, (int) request.played().stream()
                .filter(round -> round.joins(
                        students.get(one).name(), students.get(other).name()))
                .count()));
    }

    private void likeness() {
        for (int round = 0; round < problem.rounds(); round++) {
            if (request.hands().get(request.open().get(round)) == Hands.OPPOSITE) {
                problem.asking(round);
            }
        }
        boolean training = request.mode() == Mode.TRAINING;
        boolean skills = students.stream().allMatch(student -> student.skill().isPresent());
        forEachPair((a, b) -> {
            Person one = students.get(a);
            Person other = students.get(b);
            int levels = levels(one, other);
            if (training) {
                int gap =
                        skills ? Math.abs(one.skill().getAsInt() - other.skill().getAsInt()) : levels;
                problem.gap(a, b, Math.min(MOST_GAP, gap));
            } else {
                problem.cost(Objective.LEVEL, a, b, Math.min(MOST_LEVELS, levels));
            }
            if (one.hand().isPresent() && other.hand().isPresent()) {
                boolean same = one.hand().equals(other.hand());
                problem.cost(Objective.ASKED, a, b, same ? 1 : 0).cost(Objective.HANDS, a, b, same ? 0 : 1);
            }
        });
    }

    private int levels(Person one, Person other) {
        int first = one.level().map(request.levels()::indexOf).orElse(-1);
        int second = other.level().map(request.levels()::indexOf).orElse(-1);
        return first < 0 || second < 0 ? 0 : Math.abs(first - second);
    }

    private interface Pair {
        void of(int one, int other);
    }

    private void forEachPair(Pair pair) {
        for (int one = 0; one < students.size(); one++) {
            for (int other = one + 1; other < students.size(); other++) {
                pair.of(one, other);
            }
        }
    }
}
