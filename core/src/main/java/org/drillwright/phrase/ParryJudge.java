package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;

/** Judges whether a parry closes the line that is attacked, and travels as it is called. */
final class ParryJudge {

    private final Setting setting;
    private final Fencer parrier;
    private final Action.Parry parry;
    private final Position position;
    private final Objections ledger;

    ParryJudge(Setting setting, Fencer parrier, Action.Parry parry, Objections ledger) {
        this.setting = setting;
        this.parrier = parrier;
        this.parry = parry;
        this.position = parry.position().orElse(Position.QUARTE);
        this.ledger = ledger;
    }

    /** Whether the parry would close a line, by ending in it or by going round to it. */
    boolean closes(Line line) {
        ParryTable.Row row = setting.parries().row(position);
        boolean ends = row.lines().contains(line);
        boolean circles = stands() && row.lines().contains(Mirror.otherSide(line));
        return parry.kind() == ParryKind.CIRCULAR ? circles : ends || circles;
    }

    /**
     * Whether it is the parry that the first movement of a compound attack draws; a parry that ends in the last line is the
     * second one, before which the first goes without saying.
     */
    boolean isDrawnBy(Attack attack) {
        return !endsLast(attack) && shown(attack).filter(this::closes).isPresent();
    }

    /** Whether it may be, as the line is not known that the attack shows first. */
    boolean mayBeDrawnBy(Attack attack) {
        return !endsLast(attack)
                && attack.feintLine().filter(line -> !line.isKnown()).isPresent();
    }

    private boolean endsLast(Attack attack) {
        return parry.kind() != ParryKind.CIRCULAR
                && !attack.line().value().equals(shown(attack))
                && attack.line()
                        .value()
                        .filter(setting.parries().row(position).lines()::contains)
                        .isPresent();
    }

    private static Optional<Line> shown(Attack attack) {
        return attack.feintLine().flatMap(Fact::value);
    }

    private boolean stands() {
        return parrier.hand().is(position);
    }

    void judge(Attack attack) {
        Optional<Height> height = attack.height();
        boolean other = height.isPresent()
                && !attack.line().isKnown()
                && !attack.contact()
                && isAllAt(height.get().other());
        if (other) {
            ledger.refuse(new Refusal.ParryAtOtherHeight(position, height.get()));
            return;
        }
        judge(attack.line(), attack.contact());
    }

    /** Whether all that the position closes, by ending in it or going round to it, is of one height, in every school. */
    private boolean isAllAt(Height height) {
        ParryTable.Row row = setting.parries().row(position);
        return row.firm()
                && !row.lines().isEmpty()
                && row.lines().stream().allMatch(line -> line.height().equals(Optional.of(height)));
    }

    void judge(Fact<Line> attacked, boolean contact) {
        if (!ledger.asks("line", attacked.isKnown(), attacked.since())
                || attacked.value().isEmpty()) {
            return;
        }
        Line line = attacked.value().get();
        boolean cedes = parry.kind() == ParryKind.CEDING && contact;
        boolean arm = line == Line.ARM;
        if (cedes || arm || setting.parries().row(position).lines().isEmpty()) {
            return;
        }
        if (parry.kind() == ParryKind.CIRCULAR) {
            judgeCircle(line);
        } else {
            judgePlain(line);
        }
    }

    private void judgeCircle(Line attacked) {
        if (ledger.asks("guard", parrier.hand().isKnown(), parrier.hand().since()) && !sameLine(parrier.hand())) {
            ledger.refuse(
                    new Refusal.CircleElsewhere(position, parrier.hand().value().orElse(position), attacked));
            return;
        }
        ParryTable.Row row = setting.parries().row(position);
        if (row.lines().contains(attacked)) {
            ledger.refuse(new Refusal.CircleNotNeeded(position, attacked));
        } else if (!row.lines().contains(Mirror.otherSide(attacked))) {
            misses(attacked, row);
        }
    }

    /** Whether the hand stands in the position or in its twin of the same line (sixte and tierce, octave and seconde). */
    private boolean sameLine(Fact<Position> hand) {
        Optional<Line> here = hand.value().flatMap(setting::lineOf);
        return hand.is(position) || (here.isPresent() && here.equals(setting.lineOf(position)));
    }

    private void judgePlain(Line attacked) {
        ParryTable.Row row = setting.parries().row(position);
        if (row.lines().contains(attacked)) {
            judgeKind();
            return;
        }
        boolean byCircle = row.lines().contains(Mirror.otherSide(attacked)) && !setting.isSabre();
        if (byCircle && stands() && parry.kind() == ParryKind.UNSTATED) {
            ledger.refuse(new Refusal.CircleWanted(position, attacked));
        } else {
            misses(attacked, row);
        }
    }

    private void misses(Line attacked, ParryTable.Row row) {
        ledger.refuse(new Refusal.ParryMisses(position, parry.kind(), attacked, parrier.hand(), row.firm()));
    }

    private void judgeKind() {
        Optional<Position> from = parrier.hand().value();
        Optional<ParryKind> is = from.flatMap(hand -> ParryTravel.kind(setting, hand, position));
        boolean stated = parry.kind() != ParryKind.UNSTATED && parry.kind() != ParryKind.CEDING;
        if (stated && is.isPresent() && is.get() != parry.kind() && is.get() != ParryKind.UNSTATED) {
            ledger.refuse(new Refusal.KindDiffers(from.orElse(position), position, parry.kind(), is.get()));
        }
    }
}
