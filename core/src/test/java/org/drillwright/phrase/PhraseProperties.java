package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.drillwright.check.Corpus;
import org.drillwright.check.Sample;
import org.drillwright.check.mutation.Redraft;
import org.drillwright.model.Drill;
import org.drillwright.model.Hands;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.notation.Line;
import org.drillwright.read.DrillWriter;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;

/** What holds of any drill that is played. */
class PhraseProperties {

    /** A drill of a corpus, and the corpus around it. */
    record Placed(Corpus corpus, Sample sample) {

        Drill drill() {
            return sample.subject().drill();
        }

        Sample judge(Drill other) {
            return corpus.judge(sample.id(), DrillWriter.write(other));
        }

        @Override
        public String toString() {
            return sample.id();
        }
    }

    private static final List<Placed> DRILLS = Stream.of(Corpus.correct(), Corpus.handbook(), Corpus.exampleSchool())
            .flatMap(corpus -> corpus.samples().stream().map(sample -> new Placed(corpus, sample)))
            .toList();

    private static final List<String> FORMS = TurnReader.standard().glossary().items().stream()
            .flatMap(item -> item.words().values().stream().flatMap(List::stream))
            .distinct()
            .toList();

    @Provide
    Arbitrary<Placed> drills() {
        return Arbitraries.of(DRILLS);
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void any_words_in_any_drill_are_played_and_judged(
            @ForAll("drills") Placed placed, @ForAll("texts") List<String> texts) {
        Redraft redraft = Redraft.of(placed.drill());
        for (int at = 0; at < texts.size(); at++) {
            int step = at / 2 % placed.drill().steps().size();
            redraft.turn(step, at % 2 == 0 ? Side.LEADER : Side.FOLLOWER, texts.get(at));
        }
        redraft.opening(texts.get(0)).start(texts.get(1)).closing(texts.get(2));
        Sample judged = placed.judge(redraft.drill());
        assertNotNull(judged.subject().replay().end());
    }

    @Provide
    Arbitrary<List<String>> texts() {
        Arbitrary<String> form = Arbitraries.of(FORMS);
        Arbitrary<String> noise = Arbitraries.of(
                "and",
                ",",
                ".",
                ", then",
                "or",
                "/",
                "with",
                "by",
                "x",
                "\u00e9",
                "\ud83e\udd3a",
                "leader",
                "follower",
                "two",
                "2",
                "the",
                "(",
                ")",
                ";",
                "not",
                "-",
                "'");
        return Arbitraries.frequencyOf(Tuple.of(3, form), Tuple.of(2, noise))
                .list()
                .ofMinSize(1)
                .ofMaxSize(9)
                .map(words -> "x " + String.join(" ", words))
                .list()
                .ofMinSize(3)
                .ofMaxSize(10);
    }

    @Property(tries = 300)
    void a_start_that_says_less_adds_no_error_and_no_certificate(
            @ForAll("drills") Placed placed, @ForAll("bits") List<Boolean> kept) {
        String[] parts = placed.drill().start().split("(?<=[.,])\\s+");
        List<String> rest = new ArrayList<>();
        for (int at = 0; at < parts.length; at++) {
            if (kept.get(at % kept.size())) {
                rest.add(parts[at]);
            }
        }
        Sample less = placed.judge(Redraft.of(placed.drill())
                .start(rest.isEmpty() ? "As the opening leaves both." : String.join(" ", rest))
                .drill());
        List<String> errors = said(placed.sample(), 0);
        boolean whole = placed.sample().subject().coverage().isWhole();
        assertTrue(whole || !less.subject().coverage().isWhole(), () -> "all is judged where less is told: " + rest);
        List<String> added = new ArrayList<>(errorsOf(less));
        added.removeAll(errorsOf(placed.sample()));
        assertEquals(List.of(), added, () -> rest + " " + less.said(less.errors()) + errors);
    }

    @Provide
    Arbitrary<List<Boolean>> bits() {
        return Arbitraries.of(true, false).list().ofSize(4);
    }

    private static List<String> errorsOf(Sample sample) {
        return sample.errors().stream().map(sample::said).toList();
    }

    /** Which hand two of the same hand hold the weapon in is not asked: no word about it changes anything. */
    @Property(tries = 150)
    void two_left_handers_are_found_what_two_right_handers_are(@ForAll("drills") Placed placed) {
        Drill drill = placed.drill();
        Sample left = placed.judge(Redraft.of(drill)
                .remark("For two left-handers: both hold the weapon in the left hand.")
                .drill());
        assertEquals(drill.hands(), left.subject().drill().hands());
        Replay right = placed.sample().subject().replay();
        assertEquals(right.counts(), left.subject().replay().counts());
        assertEquals(right.closing(), left.subject().replay().closing());
        assertEquals(said(placed.sample(), 0), said(left, 0));
    }

    /** What a drill is called, and whom it names in its purpose, is not fenced. */
    @Property(tries = 150)
    void another_title_and_other_people_change_nothing(
            @ForAll("drills") Placed placed, @ForAll("names") List<String> names) {
        Sample renamed = placed.judge(Redraft.of(placed.drill())
                .called("The drill of " + names.get(0), names.get(1) + " shows it to " + names.get(2) + ".")
                .drill());
        Replay replay = placed.sample().subject().replay();
        assertEquals(replay.counts(), renamed.subject().replay().counts());
        assertEquals(replay.closing(), renamed.subject().replay().closing());
        assertEquals(said(placed.sample(), 0), said(renamed, 0));
    }

    @Provide
    Arbitrary<List<String>> names() {
        return Arbitraries.of("Ottoline", "Quarte", "Lunge", "Bram", "the leader", "Follower", "Sixte", "Peregrine")
                .list()
                .ofSize(3);
    }

    @Property
    void seen_from_the_other_body_and_back_a_line_is_itself(@ForAll Line line, @ForAll Hands hands) {
        Line across = Mirror.across(line, hands);
        assertEquals(line, Mirror.across(across, hands));
        assertEquals(line.height(), across.height());
        assertEquals(hands == Hands.SAME || line.width().isEmpty(), across == line);
    }

    @Property(tries = 100)
    void hands_changed_twice_are_what_they_were(@ForAll("drills") Placed placed) {
        Drill other = Redraft.of(placed.drill()).otherHands().drill();
        Drill back =
                Redraft.of(placed.judge(other).subject().drill()).otherHands().drill();
        assertEquals(said(placed.sample(), 0), said(placed.judge(back), 0));
    }

    /** Out to where nothing reaches, a step forward and a step back there, and in again: nothing after it changes. */
    @Property(tries = 250)
    void steps_at_a_safe_distance_change_nothing_after_them(@ForAll("drills") Placed placed, @ForAll Side who) {
        boolean solo = !placed.sample().subject().isPartnerDrill();
        List<String> steps = solo
                ? List.of("Advance.", "Retreat.")
                : List.of("Retreat.", "Retreat.", "Advance.", "Retreat.", "Advance.", "Advance.");
        Redraft redraft = Redraft.of(placed.drill());
        for (int at = steps.size() - 1; at >= 0; at--) {
            redraft.first(walk(solo ? Side.FOLLOWER : who, steps.get(at)));
        }
        Sample walked = placed.judge(redraft.drill());
        assertEquals(said(placed.sample(), 0), said(walked, steps.size()));
    }

    private static Step walk(Side who, String words) {
        Optional<Turn> walks = Optional.of(Turn.of(words));
        Optional<Turn> stays = Optional.of(Turn.of("Stand fast."));
        return new Step(
                OptionalInt.empty(),
                "",
                who == Side.LEADER ? walks : stays,
                who == Side.FOLLOWER ? walks : stays,
                "out",
                "",
                "");
    }

    /** Errors and warnings behind the first counts, with the place counted from there; written numbers aside. */
    private static List<String> said(Sample sample, int from) {
        List<String> said = new ArrayList<>();
        for (Finding finding : sample.findings()) {
            OptionalInt count = sample.count(finding);
            boolean counts =
                    finding.severity() != Severity.NOTE && !finding.rule().equals("number-out-of-order");
            if (counts && (count.isEmpty() || count.getAsInt() > from)) {
                said.add(finding.rule() + (count.isPresent() ? " at " + (count.getAsInt() - from) : ""));
            }
        }
        return said;
    }
}
