package org.drillwright.check.safety;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.drillwright.check.Intent;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;

/** The gear is listed and covers what the drill makes necessary. */
public final class GearMissing implements Rule {

    private static final RuleText TEXT = new RuleText(
            "gear-missing",
            Severity.ERROR,
            true,
            "Gear is listed item by item and covers everything the drill calls for.",
            "A point aimed at a person calls for mask, jacket and glove; touches call for the underarm"
                    + " protector too (Technical"
                    + " Rules t.20.2, t.64.5; the rest common practice, no source).",
            """
            gear: [mask, jacket, glove]
            #     ^^^^^^^^^^^^^^^^^^^^^
            """,
            """
            gear: [mask, jacket, underarm protector, glove]
            """);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        if (subject.isLost("gear")) {
            return;
        }
        List<String> gear = subject.school().gearOf(subject.drill());
        FieldPath path = FieldPath.of("gear");
        if (gear.isEmpty() && !subject.isWritten(path)) {
            findings.error(
                    TEXT.id(),
                    subject.keySpan(path),
                    "No gear is listed.",
                    "Add a line: gear: [" + String.join(", ", words(needed(subject))) + "]"
                            + (needed(subject).isEmpty() ? ", or what is worn and brought." : ""));
            return;
        }
        GearList list = new GearList(gear, subject.school().words());
        reportUnclear(subject, list, findings);
        List<GearPiece> missing = needed(subject).stream()
                .filter(piece -> !list.has(piece) && list.unclear(piece).isEmpty())
                .toList();
        if (!missing.isEmpty()) {
            List<String> whole = new ArrayList<>(gear);
            whole.addAll(words(missing));
            findings.error(
                    TEXT.id(),
                    subject.span(path),
                    "Missing from the gear: " + String.join(", ", words(missing)) + ".",
                    "Write: gear: [" + String.join(", ", whole) + "]");
        }
    }

    /** What may be a piece and may be none is neither counted nor missed. */
    private static void reportUnclear(Subject subject, GearList list, Findings findings) {
        for (GearPiece piece : needed(subject)) {
            if (list.has(piece)) {
                continue;
            }
            for (GearList.Unclear unclear : list.unclear(piece)) {
                findings.warning(
                        TEXT.id(),
                        subject.span(FieldPath.of("gear")),
                        "Not judged: '" + unclear.item() + "' was not counted as the " + piece.words() + ", because '"
                                + String.join("', '", unclear.words()) + "' was not understood.",
                        "List the piece as '" + piece.words() + "', and put anything else about it in a caution.");
            }
        }
    }

    /**
     * The pieces that the drill's own list must be given, as far as there is one answer: none if the list is the school's, and
     * none that it speaks of already.
     */
    public static List<String> toAdd(Subject subject) {
        if (subject.isLost("gear")) {
            return List.of();
        }
        List<String> own = subject.drill().gear();
        if (own.isEmpty() && !subject.school().gearOf(subject.drill()).isEmpty()) {
            return List.of();
        }
        GearList list = new GearList(own, subject.school().words());
        return words(
                needed(subject).stream().filter(piece -> !list.speaksOf(piece)).toList());
    }

    private static List<String> words(Iterable<GearPiece> pieces) {
        List<String> words = new ArrayList<>();
        pieces.forEach(piece -> words.add(piece.words()));
        return words;
    }

    private static Set<GearPiece> needed(Subject subject) {
        Set<GearPiece> needed = EnumSet.noneOf(GearPiece.class);
        if (!subject.isPartnerDrill()) {
            return needed;
        }
        for (Subject.Place turn : subject.turns()) {
            if (Intent.isOffensive(subject.turn(turn.step(), turn.side()))
                    || Intent.isTouch(subject.turn(turn.step(), turn.side()))) {
                needed.add(GearPiece.MASK);
                needed.add(GearPiece.JACKET);
                needed.add(GearPiece.GLOVE);
            }
            if (Intent.isTouch(subject.turn(turn.step(), turn.side()))) {
                needed.add(GearPiece.UNDERARM_PROTECTOR);
            }
        }
        return needed;
    }
}
