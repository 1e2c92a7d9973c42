package org.drillwright.terms;

import org.drillwright.model.Language;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Line;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.notation.Target;
import org.drillwright.wording.ConstantName;
import org.drillwright.wording.Message;

/**
 * The trade's terms as messages. The plain form is the bare word; a gap may ask for another: {@code the} or {@code a} (with its article,
 * as the subject), {@code acc} (the same as an object), {@code of} (whose), {@code to} (to whom), {@code at} (of a measure: where), {@code in} and {@code into} (of a
 * line: where, and whither), {@code de} (of a position: which, as in a parry of quarte).
 * A language need only have those that its own words ask for.
 */
public final class Terms {

    private Terms() {}

    public static Message of(Side side) {
        return term("side", side);
    }

    public static Message of(Line line) {
        return term("line", line);
    }

    public static Message of(Position position) {
        return term("position", position);
    }

    public static Message of(Measure measure) {
        return term("measure", measure);
    }

    public static Message of(Target target) {
        return term("target", target);
    }

    public static Message of(Weapon weapon) {
        return term("weapon", weapon);
    }

    public static Message of(ParryKind kind) {
        return term("parry", kind);
    }

    public static Message of(Path path) {
        return term("path", path);
    }

    public static Message of(Language language) {
        return Message.of(Terms.class, "language." + language.word());
    }

    private static Message term(String kind, Enum<?> one) {
        return Message.of(Terms.class, kind + "." + ConstantName.hyphened(one));
    }
}
