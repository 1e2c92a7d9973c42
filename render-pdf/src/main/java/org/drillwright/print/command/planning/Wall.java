package org.drillwright.print.command.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.kept.PrintedState;
import org.drillwright.plan.pair.Pairing;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.PairingRequest;
import org.drillwright.plan.pair.Round;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.wording.Message;

/**
 * What hangs on the wall, and what follows from it. What was printed holds: it is planned anew only where nothing of it
 * was worked, or from a round on that somebody names.
 */
public final class Wall {

    private final Tonight tonight;
    private final PlanMarks marks;
    private final Optional<Kept> start;
    private final boolean chosen;

    private Wall(Tonight tonight, Optional<String> mark) {
        this.tonight = tonight;
        this.marks = new PlanMarks(tonight);
        this.chosen = mark.isPresent();
        this.start = mark.isPresent() ? mark.map(marks::named) : marks.head();
    }

    /** @param mark of the plan that is started from, as it was typed; normally the one that hangs */
    public static Wall of(Tonight tonight, Optional<String> mark) {
        return new Wall(tonight, mark);
    }

    /** Started from the one that hangs. */
    public static Wall of(Tonight tonight) {
        return of(tonight, Optional.empty());
    }

    /** A request and what came of it. */
    private record Found(PairingRequest request, Pairing pairing) {

        static Found of(PairingRequest request) {
            return new Found(request, Pairing.of(request));
        }

        List<Round> rounds() {
            return pairing.plan().rounds();
        }
    }

    /** The plan that hangs, or a first one. */
    public Shown shown() {
        return shown(List.of());
    }

    /** The plan after some changes; without any the one that hangs, or a first one. */
    public Shown shown(List<Substitution> changes) {
        if (changes.isEmpty()) {
            return start.map(this::again).orElseGet(() -> shown(fresh()));
        }
        return start.map(kept -> changed(kept, changes)).orElseGet(() -> shown(after(fresh(), changes)));
    }

    /** The plan that is made now, whatever was printed. */
    static KeptPlan unprinted(Tonight tonight) {
        PairingRequest request = tonight.plan().pairing();
        return said(tonight, Pairing.of(request).plan(), Optional.empty(), request.helpers());
    }

    private Found fresh() {
        return Found.of(tonight.plan().pairing());
    }

    /** Nothing was worked of it and it wasn't asked for: the files hold. Else it is told as it was printed. */
    private Shown again(Kept kept) {
        boolean filesHold = kept.plan().worked() == 0 && !chosen;
        if (filesHold || kept.plan().rounds().isEmpty()) {
            return shown(fresh());
        }
        Found found =
                kept.plan().worked() == 0 ? fresh() : anew(kept, kept.plan().worked() + 1);
        if (found.rounds().equals(kept.plan().rounds())) {
            return shown(found);
        }
        return shown(
                PairingPlan.printed(
                        kept.plan().rounds(), kept.plan().worked(), kept.plan().walks()),
                Optional.empty(),
                kept.plan().helpers());
    }

    private Shown changed(Kept kept, List<Substitution> changes) {
        int first = changes.get(0).fromRound();
        Optional<Kept> from = Optional.of(kept);
        while (from.isPresent() && from.get().plan().worked() >= first) {
            from = marks.plans().before(from.get());
        }
        Optional<Found> found = from.map(base -> after(anew(base, first), changes));
        boolean again =
                found.isPresent() && found.get().rounds().equals(kept.plan().rounds());
        if (found.isPresent() && (again || from.get().equals(kept))) {
            return shown(found.get());
        }
        int worked = kept.plan().worked();
        String mark = kept.mark().shown();
        throw new CannotRun(kept.plan()
                .after()
                .map(before -> Message.counted(Wall.class, "worked.after", worked, mark, worked + 1, before.shown()))
                .orElseGet(() -> Message.counted(Wall.class, "worked", worked, mark, worked + 1)));
    }

    /** The rounds of a printed plan from one on, found anew for the same people. */
    private Found anew(Kept kept, int from) {
        List<Round> rounds = kept.plan().rounds();
        if (from > rounds.size() + 1 || rounds.isEmpty()) {
            throw noSuchRound(from, rounds.size());
        }
        SincePrinted.mustBeOnTheRoster(tonight, kept.mark().shown(), kept.plan().names());
        PairingRequest request = tonight.plan()
                .pairing()
                .standing(
                        tonight.roster(),
                        rounds.get(Math.min(from, rounds.size()) - 1),
                        kept.plan().helpers(),
                        drills(kept, from));
        return Found.of(request.after(rounds.subList(0, from - 1), tonight.roster()));
    }

    /** The drills that were printed; from a round on those of the class's file, if that was changed. */
    private List<String> drills(Kept kept, int from) {
        List<String> printed = kept.plan().rounds().stream().map(Round::drill).toList();
        List<String> now = tonight.plan().pairing().drills();
        if (!kept.changedSince(tonight.figures()).contains("class") || now.size() < from - 1) {
            return printed;
        }
        List<String> drills = new ArrayList<>(printed.subList(0, from - 1));
        drills.addAll(now.subList(from - 1, now.size()));
        return drills;
    }

    private Found after(Found found, List<Substitution> changes) {
        Found last = found;
        for (Substitution change : changes) {
            List<Round> rounds = last.rounds();
            if (change.fromRound() > rounds.size() + 1) {
                throw noSuchRound(change.fromRound(), rounds.size());
            }
            last = Found.of(changed(last.request(), change, rounds.subList(0, change.fromRound() - 1)));
        }
        return last;
    }

    private static CannotRun noSuchRound(int round, int rounds) {
        return new CannotRun(Message.of(Wall.class, "no.round", round, rounds));
    }

    private PairingRequest changed(PairingRequest request, Substitution change, List<Round> played) {
        People people = new People(tonight.roster());
        List<String> without = change.without().stream().map(people::name).toList();
        List<String> with =
                change.with().stream().map(name -> people.person(name).name()).toList();
        for (String name : without) {
            boolean here = request.students().stream()
                            .anyMatch(student -> student.name().equals(name))
                    || request.soloists().contains(name)
                    || request.helpers().contains(name)
                    || start.filter(kept -> kept.plan().names().contains(name)).isPresent();
            if (!here) {
                throw new CannotRun(Message.of(Wall.class, "not.here", name));
            }
        }
        return request.after(played, tonight.roster(), without, with);
    }

    private Shown shown(Found found) {
        return shown(
                found.pairing().plan(),
                Optional.of(found.pairing()),
                found.request().helpers());
    }

    private Shown shown(PairingPlan plan, Optional<Pairing> pairing, List<String> helpers) {
        Optional<Kept> head = chosen && marks.heads() > 1 ? start : marks.head();
        Optional<Kept> hangs = head.filter(kept -> kept.plan().rounds().equals(plan.rounds()));
        KeptPlan said = hangs.map(Kept::plan).orElseGet(() -> said(tonight, plan, head.map(Kept::mark), helpers));
        List<Message> remarks = head.stream()
                .flatMap(kept -> new SincePrinted(tonight, kept).changes().stream())
                .toList();
        return new Shown(
                plan, pairing, said, hangs, new PrintedState(hangs.map(Kept::mark), head.map(Kept::mark), remarks));
    }

    private static KeptPlan said(Tonight tonight, PairingPlan plan, Optional<PlanMark> after, List<String> helpers) {
        return new KeptPlan(
                tonight.named(),
                tonight.plan().brief().date(),
                after,
                plan.firstPlanned(),
                cards(tonight, plan),
                KeptPlan.hereIn(plan.rounds(), tonight.roster().names()),
                helpers,
                plan.rounds(),
                plan.walks());
    }

    private static Map<String, String> cards(Tonight tonight, PairingPlan plan) {
        Map<String, String> cards = new LinkedHashMap<>();
        plan.rounds().forEach(round -> tonight.card(round.drill()).ifPresent(mark -> cards.put(round.drill(), mark)));
        return cards;
    }

    /** Keeps a plan before it is printed, so that no sheet hangs whose mark isn't known; the plan as it is kept. */
    public Kept keep(Shown shown) {
        return shown.printed().orElseGet(() -> marks.keep(shown.said(), tonight.figures()));
    }

    /** The plan that holds, which was printed; nothing if none was. */
    public Optional<Kept> start() {
        return start;
    }

    /** What to say once a plan was kept. */
    public Message sentence(Shown shown, Kept kept) {
        String mark = kept.mark().shown();
        if (shown.printed().isPresent()) {
            return Message.of(Wall.class, "still.hangs", mark);
        }
        return kept.plan()
                .after()
                .map(before -> Message.of(Wall.class, "kept.instead", mark, before.shown()))
                .orElseGet(() -> Message.of(Wall.class, "kept", mark));
    }
}
