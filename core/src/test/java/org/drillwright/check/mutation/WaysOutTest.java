package org.drillwright.check.mutation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.Corpus;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.Rule;
import org.drillwright.check.Sample;
import org.drillwright.check.Subject;
import org.drillwright.check.jury.Rules;
import org.drillwright.model.Drill;
import org.drillwright.model.Side;
import org.drillwright.read.DrillWriter;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Who follows a way out is refused no more: each that is named for a spoilt drill is written into the drill as an instructor
 * would write it, and the drill is judged again. Every build tries some mutants, the profile {@code deep} all.
 */
class WaysOutTest {

    /** Of so many drills, and of so many mutants of each, one is tried in every build. */
    private static final int DRILLS = 7;

    private static final int MUTANTS = 11;

    private static final Set<String> RULES = Rules.ALL.stream()
            .filter(RefusalRule.class::isInstance)
            .map(Rule::text)
            .map(text -> text.id())
            .collect(Collectors.toSet());

    /** What became of the ways out of some mutants. */
    private static final class Tally {
        private int good;
        private int unread;
        private final List<String> bad = new ArrayList<>();
        private final List<String> unwritten = new ArrayList<>();
    }

    @Test
    void who_follows_a_way_out_is_refused_no_more() {
        holds(tried(DRILLS, MUTANTS));
    }

    @Test
    @Tag("deep")
    void so_it_is_with_all_mutants() {
        holds(tried(1, 1));
    }

    private static void holds(Tally tally) {
        assertEquals(List.of(), tally.unwritten, "no way of writing it is known here");
        assertEquals(List.of(), tally.bad, "still refused");
        assertTrue(tally.unread < 0.1 * tally.good, () -> tally.unread + " not read, " + tally.good + " good");
    }

    private static Tally tried(int drills, int mutants) {
        Tally tally = new Tally();
        int drill = 0;
        for (Corpus corpus : List.of(Corpus.correct(), Corpus.exampleSchool(), Corpus.handbook())) {
            for (String id : corpus.ids()) {
                if (drill++ % drills != 0) {
                    continue;
                }
                Sample sample = corpus.sample(id);
                boolean english = sample.subject().tongue().equals("en");
                if (!english || !sample.errors().isEmpty()) {
                    continue;
                }
                Scene scene = new Scene(sample);
                List<Drill> spoilt = Operators.ALL.stream()
                        .flatMap(operator -> operator.mutants().apply(scene))
                        .map(Mutant::drill)
                        .toList();
                for (int mutant = 0; mutant < spoilt.size(); mutant += mutants) {
                    follow(corpus, corpus.judge(id, DrillWriter.write(spoilt.get(mutant))), tally);
                }
            }
        }
        return tally;
    }

    private static void follow(Corpus corpus, Sample judged, Tally tally) {
        for (Finding finding : judged.findings()) {
            boolean refused = RULES.contains(finding.rule()) && finding.severity() != Severity.NOTE;
            Optional<Scene.At> at = refused ? place(judged, finding) : Optional.empty();
            if (at.isPresent() && !finding.wayOut().english().isEmpty()) {
                String words = finding.file().slice(finding.span());
                Penned penned = new Penned(judged, finding, at.get(), words.replaceAll("\\.$", ""));
                penned.ways().forEach(way -> follow(corpus, penned, way, tally));
            }
        }
    }

    private static void follow(Corpus corpus, Penned penned, Penned.Way way, Tally tally) {
        String told = penned.sample().id() + " " + penned.at() + " '" + penned.words() + "': "
                + penned.finding().what().english() + " > " + way.name();
        if (way.drafts().isEmpty()) {
            tally.unwritten.add(told);
            return;
        }
        boolean read = false;
        for (Drill draft : way.drafts()) {
            Sample again = corpus.judge(penned.sample().id(), DrillWriter.write(draft));
            boolean readHere =
                    again.subject().turn(penned.at().step(), penned.at().side()).isRead();
            read |= readHere;
            if (readHere && isMended(penned, again)) {
                tally.good++;
                return;
            }
        }
        if (read) {
            tally.bad.add(told);
        } else {
            tally.unread++;
        }
    }

    /** The refusal is gone, and no other has come to its turn, nor to the partner's unless that is said to change. */
    private static boolean isMended(Penned penned, Sample again) {
        List<String> before = refused(penned.sample(), penned);
        List<String> after = refused(again, penned);
        List<String> gone = new ArrayList<>(before);
        boolean nothingNew = after.stream().allMatch(gone::remove);
        return nothingNew && gone.contains(penned.finding().rule() + " " + penned.at());
    }

    private static List<String> refused(Sample judged, Penned penned) {
        return judged.findings().stream()
                .filter(finding -> RULES.contains(finding.rule()) && finding.severity() != Severity.NOTE)
                .flatMap(finding -> place(judged, finding)
                        .filter(at -> at.step() == penned.at().step())
                        .filter(at -> at.side() == penned.at().side() || !penned.partnersTurnChanges())
                        .map(at -> finding.rule() + " " + at)
                        .stream())
                .toList();
    }

    /** The turn in which a finding stands. */
    private static Optional<Scene.At> place(Sample judged, Finding finding) {
        return judged.count(finding).stream()
                .boxed()
                .flatMap(count -> Stream.of(Side.values()).map(side -> new Scene.At(count - 1, side)))
                .filter(at -> judged.subject()
                        .isWritten(Subject.stepPath(at.step()).key(at.side().word())))
                .filter(at ->
                        holds(judged.subject().spanInStep(at.step(), at.side().word()), finding.span()))
                .findFirst();
    }

    private static boolean holds(Span turn, Span words) {
        return turn.start() <= words.start() && words.end() <= turn.end();
    }
}
