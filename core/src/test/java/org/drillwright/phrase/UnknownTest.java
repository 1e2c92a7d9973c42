package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.check.Corpus;
import org.drillwright.check.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is unknown is never held against anybody: in any state of any drill, knowing less refuses no more. */
class UnknownTest {

    private static final List<Corpus> CORPORA = List.of(Corpus.correct(), Corpus.handbook(), Corpus.exampleSchool());

    private static final Set<String> PARRIES =
            Set.of("ParryMisses", "CircleElsewhere", "CircleNotNeeded", "CircleWanted", "KindDiffers");

    static List<Unknowing> parts() {
        return Unknowing.ALL;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("parts")
    void knowing_less_refuses_no_more(Unknowing unknowing) {
        List<String> added = new ArrayList<>();
        int tried = 0;
        for (Sample sample :
                CORPORA.stream().flatMap(corpus -> corpus.samples().stream()).toList()) {
            Replay replay = sample.subject().replay();
            for (Played played : moves(replay)) {
                tried++;
                Moment moment = new Moment(played.move().by(), "here", false, Fact.unknown("here"), false);
                State less = unknowing.change().apply(played.before());
                List<Refusal> before = refusals(played.before(), played, replay.setting(), moment);
                List<Refusal> after = refusals(less, played, replay.setting(), moment);
                if (!kinds(before).containsAll(kinds(after))) {
                    added.add(sample.id() + ": " + played.move().parts() + " " + after);
                }
            }
        }
        assertEquals(List.of(), added);
        assertTrue(tried > 1500, "moves tried: " + tried);
    }

    private static List<Refusal> refusals(State state, Played played, Setting setting, Moment moment) {
        return Play.play(state, played.move(), setting, moment).refusals();
    }

    /** What is refused, where all that is wrong with a parry counts as one. */
    private static Set<String> kinds(List<Refusal> refusals) {
        return refusals.stream()
                .map(refusal -> refusal.getClass().getSimpleName())
                .map(kind -> PARRIES.contains(kind) ? "a parry" : kind)
                .collect(Collectors.toSet());
    }

    private static List<Played> moves(Replay replay) {
        List<Played> moves = new ArrayList<>(replay.opening());
        replay.counts().forEach(count -> moves.addAll(count.moves()));
        moves.addAll(replay.closing());
        return moves;
    }

    @Test
    void each_part_of_the_state_is_made_unknown() {
        assertEquals(3 + 2 * 9, Unknowing.ALL.size());
    }
}
