package org.drillwright.print.pdf;

import java.util.List;
import org.drillwright.print.frame.Frame;

/**
 * Pages that a bookmark gathers, such as those of one set.
 *
 * @param title of the bookmark; blank if the drills' bookmarks stand by themselves
 */
public record Chapter(String title, List<Frame> pages) {

    public Chapter {
        pages = List.copyOf(pages);
    }

    public static Chapter untitled(List<Frame> pages) {
        return new Chapter("", pages);
    }
}
