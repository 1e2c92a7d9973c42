package org.drillwright.check.safety;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.notation.Measure;
import org.drillwright.notation.MeasureCue;
import org.drillwright.phrase.Range;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Each count has a distance cue that names a measure. */
public final class NoTrueDistance implements Rule {

    private static final RuleText TEXT = new RuleText(NoTrueDistance.class, "no-true-distance", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        Names names = new Names(subject.reader(), subject.tongue());
        for (int step = 0; step < subject.drill().steps().size(); step++) {
            String written = subject.drill().steps().get(step).distance();
            if (written.isEmpty()) {
                findings.error(
                        TEXT.id(),
                        subject.spanInStep(step, "distance"),
                        Message.of(NoTrueDistance.class, "no-true-distance.none", subject.count(step)),
                        subject.isPartnerDrill()
                                ? Message.of(
                                        NoTrueDistance.class,
                                        "no-true-distance.none.way",
                                        names.said(Measure.LUNGE),
                                        Message.words(names.known()))
                                : Message.of(
                                        NoTrueDistance.class,
                                        "no-true-distance.none.solo",
                                        names.said(Measure.OUT),
                                        Message.words(names.known())));
                continue;
            }
            Optional<MeasureCue> cue = names.read(written);
            if (cue.isPresent()) {
                judgeMeasure(subject, step, cue.get(), findings);
            } else {
                Optional<String> nearest = Nearest.to(written, names.known());
                findings.error(
                        TEXT.id(),
                        subject.spanInStep(step, "distance"),
                        Message.of(NoTrueDistance.class, "no-true-distance.unknown", written),
                        nearest.map(Nearest::meant)
                                .orElse(Message.none())
                                .then(Message.of(
                                        NoTrueDistance.class,
                                        "no-true-distance.unknown.way",
                                        Message.words(names.known()),
                                        names.said(new MeasureCue(Measure.EXTENSION, Measure.LUNGE)))));
            }
        }
    }

    /** The measures by the names that they have in the drill's language. */
    private record Names(TurnReader reader, String tongue) {

        Optional<MeasureCue> read(String cue) {
            return reader.cue(cue, tongue);
        }

        String said(Measure measure) {
            return said(new MeasureCue(measure, measure));
        }

        String said(MeasureCue cue) {
            return reader.cue(cue, tongue);
        }

        List<String> known() {
            return Stream.of(Measure.values()).map(this::said).toList();
        }
    }

    /**
     * The cue that a count must be given, if it has none or a mistyped one, the phrase was played without a refusal, and the
     * measure is known: where the count begins and where it ends.
     */
    public static Optional<String> toWrite(Subject subject, int step) {
        String cue = subject.drill().steps().get(step).distance();
        Names names = new Names(subject.reader(), subject.tongue());
        boolean doubtful = !subject.faults().isEmpty();
        if (doubtful || names.read(cue).isPresent()) {
            return Optional.empty();
        }
        List<Range> measures = subject.replay().counts().get(step).measures();
        Optional<Measure> begin = measure(measures.get(0));
        Optional<Measure> end = measure(measures.get(measures.size() - 1));
        return begin.flatMap(from -> end.map(to -> new MeasureCue(from, to)))
                .filter(known -> cue.isEmpty() || isMistyped(names, cue, known))
                .map(names::said);
    }

    private static boolean isMistyped(Names names, String cue, MeasureCue known) {
        return Nearest.to(cue, names.known())
                .filter(word -> Stream.of(known.from(), known.to())
                        .anyMatch(measure -> names.said(measure).equals(word)))
                .isPresent();
    }

    /** The one measure that a range is. */
    private static Optional<Measure> measure(Range range) {
        return range.isExact()
                ? Optional.of(Measure.of(range.least()))
                : Stream.of(Measure.values())
                        .filter(measure -> Range.of(measure).equals(range))
                        .findFirst();
    }

    /** The cue may name the measure at which the count begins, ends, or from which the second turn is made. */
    private static void judgeMeasure(Subject subject, int step, MeasureCue cue, Findings findings) {
        List<Range> measures = subject.replay().counts().get(step).measures();
        boolean known = measures.stream().allMatch(Range::isKnown);
        if (known && !(isOf(measures, cue.from()) && isOf(measures, cue.to()))) {
            Range begin = measures.get(0);
            Range end = measures.get(measures.size() - 1);
            findings.warning(
                    TEXT.id(),
                    subject.spanInStep(step, "distance"),
                    Message.of(
                            NoTrueDistance.class,
                            "no-true-distance.other",
                            subject.count(step),
                            begin.words(),
                            end.words()),
                    Message.of(NoTrueDistance.class, "no-true-distance.other.way"));
        }
    }

    private static boolean isOf(List<Range> measures, Measure named) {
        return measures.stream().anyMatch(measure -> measure.meets(Range.of(named)));
    }
}
