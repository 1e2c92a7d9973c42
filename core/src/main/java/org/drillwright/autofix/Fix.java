package org.drillwright.autofix;

import java.util.List;
import org.drillwright.source.Finding;
import org.drillwright.wording.Message;

/**
 * A way to mend something that was found.
 *
 * @param title an imperative, without a full stop: {@code Add 'distance: lunge'}
 * @param mended what it mends of what was found
 * @param onlyOne whether it is the one right answer
 */
public record Fix(Message title, List<Finding> mended, Edit edit, boolean onlyOne) {

    public Fix {
        mended = List.copyOf(mended);
    }
}
