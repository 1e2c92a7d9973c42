package org.drillwright.school;

import java.io.IOException;
import org.drillwright.read.ReadingLimits;
import org.drillwright.wording.Message;

/** A folder holds more drills than any school has; nothing of it was read. */
public final class TooManyDrills extends IOException {

    private static final Message WHAT = Message.of(TooManyDrills.class, "too.many", ReadingLimits.DRILLS);

    TooManyDrills() {
        super(WHAT.english());
    }

    /** The same for people: the end of a sentence, without its full stop. */
    public Message said() {
        return WHAT;
    }
}
