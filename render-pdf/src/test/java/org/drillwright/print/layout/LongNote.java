package org.drillwright.print.layout;

import org.drillwright.model.Drill;

/** A drill with a note that no back can hold. */
final class LongNote {

    private LongNote() {}

    static Drill of(Drill like) {
        return new Drill(
                like.id(),
                like.title(),
                like.level(),
                like.form(),
                like.weapon(),
                like.hands(),
                like.worksOn(),
                like.needs(),
                like.gear(),
                like.purpose(),
                like.start(),
                like.opening(),
                like.steps(),
                like.closing(),
                like.repeat(),
                like.swap(),
                like.tempo(),
                "Keep the hand still and the point before the foot. ".repeat(60),
                like.cautions(),
                like.variantOf(),
                like.tags(),
                like.revised(),
                like.accept());
    }
}
