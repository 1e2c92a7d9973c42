package org.drillwright.check.safety;

import org.drillwright.check.Subject;
import org.drillwright.wording.ConstantName;
import org.drillwright.wording.Message;

/**
 * A piece of gear that a phrase can make necessary (Technical Rules t.20.2, t.64.5). A mask and a glove are those of the
 * drill's weapon: that the sabre has its own is said on no list in the hall (common practice, no source).
 */
enum GearPiece {
    MASK,
    JACKET,
    UNDERARM_PROTECTOR,
    GLOVE;

    /** As a list of gear has it. */
    Message words() {
        return Message.of(GearPiece.class, key());
    }

    /** As it is to be typed into a drill's own list. */
    Message typed(Subject drill) {
        return drill.typed(GearPiece.class, key());
    }

    private String key() {
        return "piece." + ConstantName.hyphened(this);
    }
}
