package org.drillwright.check.mutation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.Corpus;
import org.drillwright.check.Coverage;
import org.drillwright.check.Sample;
import org.drillwright.model.Drill;
import org.drillwright.model.Side;
import org.drillwright.model.Turn;
import org.drillwright.read.DrillWriter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every fault that the operators plant, planted once more with its key word misspelt, with its sentence denied, and left to
 * choice. Where a fault is that something was left out, what was left out comes back so. None of these drills may pass in
 * silence as one of which all was judged: a rule speaks there that did not speak before, or the place is said to be
 * unjudged. Distance cues, safety notes and a caller's words are not played and are left alone, and so are drills of which
 * not all is judged as they stand.
 */
class DisguisedFaultsTest {

    private static final int FEWEST = 1000;

    private static final List<Corpus> CORPORA = List.of(Corpus.correct(), Corpus.exampleSchool(), Corpus.handbook());

    /** A drill with one text in disguise. */
    private record Disguised(String place, Optional<Integer> step, Drill drill) {}

    /** In the everyday build the faults of one drill of so many are tried, always the same ones. */
    private static final int SPREAD = 12;

    @ParameterizedTest
    @EnumSource(Disguise.class)
    void a_fault_in_disguise_never_passes_in_silence(Disguise disguise) {
        neverSilent(disguise, SPREAD);
    }

    @Tag("deep")
    @ParameterizedTest
    @EnumSource(Disguise.class)
    void none_of_all_faults_in_disguise_passes_in_silence(Disguise disguise) {
        neverSilent(disguise, 1);
    }

    private static void neverSilent(Disguise disguise, int spread) {
        List<String> silent = new ArrayList<>();
        Set<String> tried = new HashSet<>();
        for (Corpus corpus : CORPORA) {
            for (String id : corpus.ids()) {
                if (Math.floorMod(id.hashCode(), spread) != 0) {
                    continue;
                }
                Sample sample = corpus.sample(id);
                boolean judged =
                        sample.errors().isEmpty() && sample.subject().coverage().isWhole();
                if (!judged) {
                    continue;
                }
                Scene scene = new Scene(sample);
                Set<String> said = said(sample);
                for (Operator operator : Operators.ALL) {
                    operator.mutants()
                            .apply(scene)
                            .filter(mutant -> !mutant.harmless())
                            .flatMap(mutant -> disguised(scene, mutant.drill(), disguise))
                            .filter(one -> tried.add(sample.id() + one.place()))
                            .filter(one ->
                                    isSilent(said, one, corpus.judge(sample.id(), DrillWriter.write(one.drill()))))
                            .map(one -> operator.name() + ", " + sample.id() + ", " + one.place())
                            .forEach(silent::add);
                }
            }
        }
        assertEquals(List.of(), silent);
        assertTrue(tried.size() >= FEWEST / spread, () -> tried.size() + " faults");
    }

    /** Everything that is said of a drill, each with its place. */
    private static Set<String> said(Sample sample) {
        Set<String> said = new HashSet<>();
        Stream.concat(sample.errors().stream(), sample.warnings().stream())
                .map(finding -> sample.said(finding) + ": " + finding.what().english())
                .forEach(said::add);
        Coverage coverage = sample.subject().coverage();
        coverage.gaps().forEach(gap -> said.add("unjudged at " + (gap.step() + 1)));
        coverage.ends().forEach(end -> said.add("unjudged: " + end.part() + " " + end.words()));
        return said;
    }

    /** A place that could not be judged before was said to be so before. */
    private static boolean isSilent(Set<String> before, Disguised one, Sample judged) {
        Set<String> after = said(judged);
        boolean unjudged = one.step()
                .map(step -> after.contains("unjudged at " + (step + 1)))
                .orElse(false);
        after.removeAll(before);
        return !unjudged && after.isEmpty();
    }

    /** The texts in which two drills differ, put into disguise one by one. */
    private static Stream<Disguised> disguised(Scene scene, Drill spoilt, Disguise disguise) {
        Drill whole = scene.drill();
        List<Disguised> all = new ArrayList<>();
        text(whole.start(), spoilt.start(), disguise)
                .ifPresent(text -> all.add(new Disguised(
                        "start: " + text,
                        Optional.empty(),
                        Redraft.of(whole).start(text).drill())));
        text(whole.opening(), spoilt.opening(), disguise)
                .ifPresent(text -> all.add(new Disguised(
                        "opening: " + text,
                        Optional.empty(),
                        Redraft.of(whole).opening(text).drill())));
        text(whole.closing(), spoilt.closing(), disguise)
                .ifPresent(text -> all.add(new Disguised(
                        "closing: " + text,
                        Optional.empty(),
                        Redraft.of(whole).closing(text).drill())));
        for (int step = 0; step < whole.steps().size(); step++) {
            for (Side side : scene.isPartnerDrill() ? List.of(Side.values()) : List.of(Side.FOLLOWER)) {
                int at = step;
                text(turn(whole, step, side), turn(spoilt, step, side), disguise)
                        .ifPresent(text -> all.add(new Disguised(
                                new Scene.At(at, side) + ": " + text,
                                Optional.of(at),
                                Redraft.of(spoilt).turn(at, side, text).drill())));
            }
        }
        for (String item : whole.gear()) {
            if (!spoilt.gear().contains(item)) {
                disguise.ofItem(item)
                        .ifPresent(other -> all.add(new Disguised(
                                "gear: " + other,
                                Optional.empty(),
                                Redraft.of(whole)
                                        .gear(whole.gear().stream()
                                                .map(one -> one.equals(item) ? other : one)
                                                .toList())
                                        .drill())));
            }
        }
        return all.stream();
    }

    private static String turn(Drill drill, int step, Side side) {
        return drill.steps().get(step).turn(side).map(Turn::read).orElse("");
    }

    /** The new words in disguise; where words only went away, these. */
    private static Optional<String> text(String old, String spoilt, Disguise disguise) {
        if (old.equals(spoilt)) {
            return Optional.empty();
        }
        return key(spoilt, old)
                .flatMap(word -> disguise.inText(spoilt, word))
                .or(() -> key(old, spoilt).flatMap(word -> disguise.inText(old, word)));
    }

    /** The longest word of a text that another lacks. */
    private static Optional<String> key(String text, String other) {
        Set<String> there = Disguise.words(other).collect(Collectors.toSet());
        return Disguise.words(text)
                .filter(word -> !there.contains(word) && word.length() > 2)
                .max(Comparator.comparing(String::length));
    }
}
