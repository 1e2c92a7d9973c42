package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.check.Corpus;
import org.drillwright.check.Judged;
import org.drillwright.check.Sample;
import org.drillwright.check.Script;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.told.ToldClauses;
import org.drillwright.source.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the doubts of a clause make unknown, written by hand, and that nothing is held against anybody for it: a drill in
 * which something is in doubt is refused nothing that it was not refused before.
 */
class DoubtTest {

    private static final List<Corpus> CORPORA = List.of(Corpus.correct(), Corpus.handbook(), Corpus.exampleSchool());

    /** The first count of a drill, with a doubt put on each clause of one turn. */
    private static Replay doubted(Subject subject, int step, Side side, Doubt doubt) {
        Script script = subject.script();
        List<Map<Side, Utterance>> steps = new ArrayList<>();
        for (Map<Side, Utterance> turns : script.steps()) {
            steps.add(new EnumMap<>(turns));
        }
        steps.get(step).put(side, with(script.turn(step, side), doubt));
        return Rehearsal.of(
                        subject.replay().setting(),
                        new Rehearsal.Words(script.opening(), script.start(), steps, script.closing()))
                .replay();
    }

    private static Utterance with(Utterance turn, Doubt doubt) {
        return new Utterance(
                turn.clauses().stream()
                        .map(clause -> new Clause(
                                clause.action(), clause.subject(), clause.span(), clause.join(), Set.of(doubt)))
                        .toList(),
                List.of(Span.at(0)),
                turn.open(),
                turn.readings(),
                List.of(),
                turn.tradeWords(),
                turn.telling());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Thrust to the high inside line. | MANNER | hand, engagement, attack on follower, parried",
                "Thrust to the high inside line. | DONE   | feet, hand, mask, measure, engagement, attack on follower, parried",
                "Thrust to the high inside line. | WHO    | feet, hand, mask, follower's feet, follower's hand, follower's mask, measure, engagement, attack on leader, attack on follower, parried",
                "Beat the blade.                 | MANNER | hand, follower's hand, engagement, attack on follower, parried",
                "Parry quarte.                   | MANNER | hand, engagement, attack on follower, parried",
                "Advance.                        | STEPS  | feet, measure",
                "Advance.                        | MANNER | feet, measure",
                "Lunge.                          | STEPS  | feet, measure",
                "Lunge.                          | MANNER | feet, hand, measure, engagement, attack on follower, parried",
                "Masks off.                      | MASK   | mask",
                "Masks off.                      | MANNER | mask",
                "Masks off.                      | CHOICE | feet, hand, mask, measure, engagement, attack on follower, parried",
                "Salute.                         | MANNER | nothing"
            })
    void a_doubt_makes_unknown_what_it_names(String turn, Doubt doubt, String unknown) {
        Subject subject = Judged.drill("steps:\n  - leader: " + turn + "\n    follower: Advance.\n")
                .subject();
        State state = doubted(subject, 0, Side.LEADER, doubt).counts().get(0).moves().stream()
                .filter(played -> played.move().by() == Side.LEADER)
                .reduce((first, last) -> last)
                .orElseThrow()
                .after();
        assertEquals(unknown, String.join(", ", unknown(state)));
    }

    private static List<String> unknown(State state) {
        List<String> unknown = new ArrayList<>();
        for (Side side : Side.values()) {
            Fencer fencer = state.of(side);
            String whose = side == Side.LEADER ? "" : "follower's ";
            note(unknown, whose + "feet", fencer.feet().isKnown());
            boolean hand = fencer.hand().isKnown()
                    || fencer.covers().isKnown()
                    || fencer.point().isKnown();
            note(unknown, whose + "hand", hand);
            note(unknown, whose + "mask", fencer.masked().isKnown());
        }
        note(unknown, "measure", state.measure().isKnown());
        note(unknown, "engagement", state.engagement().isKnown());
        note(unknown, "attack on leader", state.on(Side.LEADER).isKnown());
        note(unknown, "attack on follower", state.on(Side.FOLLOWER).isKnown());
        note(unknown, "parried", state.parried().isKnown());
        return unknown.isEmpty() ? List.of("nothing") : unknown;
    }

    private static void note(List<String> unknown, String part, boolean known) {
        if (!known) {
            unknown.add(part);
        }
    }

    /** A parry in doubt leaves open whether the attack is still under way. */
    @Test
    void an_attack_that_a_doubtful_parry_meets_is_neither_met_nor_unmet() {
        Subject subject = Judged.drill("").subject();
        Count count = doubted(subject, 0, Side.FOLLOWER, Doubt.MANNER).counts().get(0);
        assertFalse(count.end().on(Side.FOLLOWER).isKnown());
        assertEquals(Map.of(), count.unmet());
    }

    @Test
    void a_drill_with_one_turn_in_doubt_is_refused_no_more() {
        List<String> added = new ArrayList<>();
        int turns = 0;
        for (Corpus corpus : CORPORA) {
            for (Sample sample : corpus.samples()) {
                Subject subject = sample.subject();
                Set<String> before = refusals(subject.replay());
                for (int step = 0; step < subject.drill().steps().size(); step++) {
                    for (Side side : Side.values()) {
                        turns++;
                        for (Doubt doubt : Doubt.values()) {
                            String place = sample.id() + " " + side + " " + step + " " + doubt;
                            Replay replay = doubted(subject, step, side, doubt);
                            Set<String> after = refusals(replay);
                            after.removeAll(before);
                            if (!after.isEmpty()) {
                                added.add(place + ": " + after);
                            }
                            assertTrue(
                                    replay.counts().get(step).moves().stream()
                                            .filter(played -> played.move().by() == side)
                                            .allMatch(
                                                    played -> played.refusals().isEmpty()),
                                    place);
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), added);
        assertTrue(turns > 1000, "turns tried: " + turns);
    }

    private static Set<String> refusals(Replay replay) {
        Set<String> refusals = new LinkedHashSet<>();
        for (int step = 0; step < replay.counts().size(); step++) {
            for (Played played : replay.counts().get(step).moves()) {
                for (Refusal refusal : played.refusals()) {
                    refusals.add(step + " " + refusal.getClass().getSimpleName());
                }
            }
            int at = step;
            replay.counts().get(step).unmet().values().stream()
                    .map(refusal -> at + " " + refusal.getClass().getSimpleName())
                    .forEach(refusals::add);
        }
        return refusals;
    }

    /** Words that no clause answers for leave all of the turn open. */
    @Test
    void an_unread_word_without_a_doubt_is_an_action_that_is_not_known() {
        Subject subject = Judged.drill("").subject();
        Utterance turn = subject.turn(0, Side.FOLLOWER);
        Utterance strange = new Utterance(
                turn.clauses(),
                List.of(Span.at(0)),
                List.of(),
                List.of(),
                List.of(),
                turn.tradeWords(),
                turn.telling());
        List<Clause> clauses = ToldClauses.of(strange);
        assertEquals(turn.clauses().size() + 1, clauses.size());
        assertEquals(Optional.empty(), clauses.get(clauses.size() - 1).subject());
        assertEquals(turn.clauses(), ToldClauses.of(turn));
    }
}
