package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.drillwright.model.Hands;
import org.drillwright.plan.roster.BothNew;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.plan.rounds.Solution;
import org.drillwright.plan.walk.Walked;
import org.drillwright.wording.Message;

/** What an instructor should know of a plan, in sentences that can be counted after. */
final class Facts {

    private final PairingRequest request;
    private final Walked walked;
    private final Solution solution;
    private final List<Round> rounds;
    private final List<Shortage> shortages = new ArrayList<>();
    private final List<Watch> watched = new ArrayList<>();

    Facts(PairingRequest request, Walked walked, List<Round> rounds) {
        this.request = request;
        this.walked = walked;
        this.solution = walked.solution();
        this.rounds = rounds;
        find();
    }

    /** One for each drill of the rounds planned for which not everyone has a partner. */
    List<Shortage> shortages() {
        return List.copyOf(shortages);
    }

    /** One for each drill of the rounds planned in which new ones work together by choice. */
    List<Watch> watched() {
        return List.copyOf(watched);
    }

    private List<Round> planned() {
        return rounds.subList(request.played().size(), rounds.size());
    }

    private void find() {
        Set<String> found = new HashSet<>();
        for (int round = 0; round < planned().size(); round++) {
            String drill = request.open().get(round);
            Extras extras = walked.least().get(round);
            if (found.add(drill)
                    && extras.watched() > 0
                    && extras.blanks() == 0
                    && isSeen(planned().get(round))) {
                watched.add(Watch.of(
                        planned().get(round), fresh(drill), request.students().size() - fresh(drill)));
            } else if (!extras.equals(Extras.NONE)
                    && shortages.stream().noneMatch(one -> one.drill().equals(drill))
                    && watched.stream().noneMatch(one -> one.drill().equals(drill))) {
                shortages.add(shortage(drill, round));
            }
        }
    }

    private static boolean isSeen(Round round) {
        return round.groups().stream().noneMatch(group -> group.kind() == Group.Kind.BOTH_NEW);
    }

    private int fresh(String drill) {
        return request.mode() == Mode.TRAINING
                ? 0
                : (int) request.students().stream()
                        .filter(student -> request.isNew(student.name(), drill))
                        .count();
    }

    private Shortage shortage(String drill, int round) {
        ClassPractice ways = request.ways();
        return new Shortage(
                drill,
                fresh(drill),
                request.students().size() - fresh(drill),
                with(ClassPractice.of(LeftOver.SOLO).with(BothNew.NEVER), round),
                helpers(drill),
                with(ClassPractice.of(LeftOver.THREES).with(BothNew.NEVER), round),
                with(new ClassPractice(LeftOver.THREES, BothNew.WANTED, ways.eyes(), ways.first()), round));
    }

    /** What comes of a choice is seen by making it. */
    private Extras with(ClassPractice ways, int round) {
        return Extras.of(ProblemMaker.of(request.with(ways)), round);
    }

    /** Who helps in the rounds of a drill; if nobody does, who could. */
    private List<String> helpers(String drill) {
        List<Group> groups = planned().stream()
                .filter(round -> round.drill().equals(drill))
                .flatMap(round -> round.groups().stream())
                .toList();
        List<String> busy = request.helpers().stream()
                .filter(name -> groups.stream()
                        .anyMatch(group -> group.helper().filter(name::equals).isPresent()))
                .toList();
        return busy.isEmpty() ? request.helpers().stream().filter(this::mayHelp).toList() : busy;
    }

    private boolean mayHelp(String helper) {
        return request.students().stream()
                .anyMatch(student -> request.apart().stream().noneMatch(pair -> pair.parts(student.name(), helper)));
    }

    List<Message> sentences() {
        List<Message> facts = new ArrayList<>();
        Map<List<Message>, List<String>> drills = new LinkedHashMap<>();
        watched.forEach(watch -> told(List.of(said("ended", watch.sentence())), watch.drill(), drills));
        for (Shortage shortage : shortages) {
            List<Message> sentences = new ArrayList<>(List.of(shortage.sentence()));
            shortage.choices().forEach(choice -> sentences.add(said("choice", choice)));
            told(sentences, shortage.drill(), drills);
        }
        drills.forEach((sentences, of) -> {
            facts.add(said("titled", Message.words(of), sentences.get(0)));
            facts.addAll(sentences.subList(1, sentences.size()));
        });
        fairness(facts);
        bothNew(facts);
        hands(facts);
        repeats(facts);
        skills(facts);
        return facts;
    }

    /** What is the same for several drills is said once. */
    private static void told(List<Message> sentences, String drill, Map<List<Message>, List<String>> drills) {
        drills.computeIfAbsent(sentences, none -> new ArrayList<>()).add(drill);
    }

    private void fairness(List<Message> facts) {
        int planned = request.open().size();
        List<Walk> walks = RoundMaker.walks(request, walked);
        if (walks.size() == 1
                && walks.get(0).hasRest()
                && request.open().stream().distinct().count() == 1
                && planned == walks.get(0).length()
                && planned == fresh(request.open().get(0))) {
            Extras extras = solution.extras().get(0);
            int turns = extras.threes() + extras.blanks();
            facts.add(Message.counted(Facts.class, extras.blanks() == 0 ? "fair.third" : "fair.alone", turns, planned));
        }
    }

    private void bothNew(List<Message> facts) {
        for (Round round : rounds) {
            for (Group group : round.groups()) {
                if (group.kind() == Group.Kind.BOTH_NEW) {
                    Message people = Message.all(
                            group.people().stream().map(Message::plain).toList());
                    facts.add(said("both.new", round.number(), people, round.drill()));
                }
            }
        }
    }

    /** Which pairs can't work a drill as it is written, round by round. */
    private void hands(List<Message> facts) {
        Map<String, Hand> hands = new HashMap<>();
        request.students().forEach(student -> student.hand().ifPresent(hand -> hands.put(student.name(), hand)));
        Map<String, List<Message>> alike = new LinkedHashMap<>();
        for (Round round : planned()) {
            if (request.hands().get(round.drill()) == Hands.OPPOSITE) {
                List<Message> pairs = round.groups().stream()
                        .flatMap(group -> alike(group, hands).stream())
                        .toList();
                if (!pairs.isEmpty()) {
                    alike.computeIfAbsent(round.drill(), drill -> new ArrayList<>())
                            .add(said("in.round", round.number(), Message.listed(pairs)));
                }
            }
        }
        alike.forEach((drill, pairs) -> facts.add(said("hands", drill, Message.clauses(pairs))));
    }

    private static List<Message> alike(Group group, Map<String, Hand> hands) {
        List<String> people = group.people();
        return people.subList(1, people.size()).stream()
                .filter(other -> hands.containsKey(other) && Objects.equals(hands.get(other), hands.get(people.get(0))))
                .map(other -> Message.all(List.of(Message.plain(people.get(0)), Message.plain(other))))
                .toList();
    }

    /** Counted in the plan; whether it must be so is said only if it is known. */
    private void repeats(List<Message> facts) {
        Map<Set<String>, Integer> met = new LinkedHashMap<>();
        rounds.forEach(round -> round.groups().forEach(group -> meet(group.people(), met)));
        long again = met.values().stream().filter(times -> times > 1).count();
        long least = solution.bound().of(Objective.REPEATS);
        if (solution.cost().of(Objective.REPEATS) > 0) {
            String known = least == 0 ? "unknown" : least == solution.cost().of(Objective.REPEATS) ? "least" : "more";
            facts.add(Message.counted(Facts.class, "repeats." + known, again));
        }
    }

    private static void meet(List<String> people, Map<Set<String>, Integer> met) {
        people.subList(1, people.size()).forEach(other -> met.merge(Set.of(people.get(0), other), 1, Integer::sum));
    }

    private void skills(List<Message> facts) {
        boolean numbers =
                request.students().stream().allMatch(student -> student.skill().isPresent());
        if (request.mode() == Mode.TRAINING && !numbers) {
            facts.add(said("skills"));
        }
    }

    private static Message said(String key, Object... values) {
        return Message.of(Facts.class, key, values);
    }
}
