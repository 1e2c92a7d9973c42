package org.drillwright.check.safety;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.drillwright.check.Intent;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** The gear is listed and covers what the drill makes necessary. */
public final class GearMissing implements Rule {

    private static final RuleText TEXT = new RuleText(GearMissing.class, "gear-missing", Severity.ERROR, true);

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
        Set<GearPiece> needed = needed(subject);
        if (gear.isEmpty() && !subject.isWritten(path)) {
            findings.error(
                    TEXT.id(),
                    subject.keySpan(path),
                    Message.of(GearMissing.class, "gear-missing.none"),
                    needed.isEmpty()
                            ? Message.of(GearMissing.class, "gear-missing.none.any")
                            : Message.of(
                                    GearMissing.class,
                                    "gear-missing.none.way",
                                    Message.listed(needed.stream()
                                            .map(piece -> piece.typed(subject))
                                            .toList())));
            return;
        }
        GearList list = new GearList(gear, subject.school().words());
        reportUnclear(subject, needed, list, findings);
        List<GearPiece> missing = needed.stream()
                .filter(piece -> !list.has(piece) && list.unclear(piece).isEmpty())
                .toList();
        if (!missing.isEmpty()) {
            List<Message> whole =
                    new ArrayList<>(gear.stream().map(Message::plain).toList());
            missing.forEach(piece -> whole.add(piece.typed(subject)));
            findings.error(
                    TEXT.id(),
                    subject.span(path),
                    Message.of(GearMissing.class, "gear-missing.what", listed(missing)),
                    Message.of(GearMissing.class, "gear-missing.way", Message.listed(whole)));
        }
    }

    /** What may be a piece and may be none is neither counted nor missed. */
    private static void reportUnclear(Subject subject, Set<GearPiece> needed, GearList list, Findings findings) {
        for (GearPiece piece : needed) {
            if (list.has(piece)) {
                continue;
            }
            for (GearList.Unclear unclear : list.unclear(piece)) {
                findings.warning(
                        TEXT.id(),
                        subject.span(FieldPath.of("gear")),
                        Message.of(
                                GearMissing.class,
                                "gear-missing.unclear",
                                unclear.item(),
                                piece.words(),
                                Message.listed(unclear.words().stream()
                                        .map(Message::quoted)
                                        .toList())),
                        Message.of(GearMissing.class, "gear-missing.unclear.way", piece.typed(subject)));
            }
        }
    }

    /**
     * The pieces that the drill's own list must be given, in the drill's language, as far as there is one answer: none if the
     * list is the school's, and none that it speaks of already.
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
        return needed(subject).stream()
                .filter(piece -> !list.speaksOf(piece))
                .map(piece -> piece.typed(subject).in(Locale.ROOT))
                .toList();
    }

    private static Message listed(Collection<GearPiece> pieces) {
        return Message.listed(pieces.stream().map(GearPiece::words).toList());
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
