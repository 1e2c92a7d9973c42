package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.RunRole;
import org.drillwright.print.text.Styled;

/**
 * On which page each drill begins.
 *
 * @param pages by the drill's id
 */
record PageNumbers(Map<String, Integer> pages) {

    PageNumbers {
        pages = Map.copyOf(pages);
    }

    int of(String drill) {
        return pages.getOrDefault(drill, 1);
    }

    int drills() {
        return pages.size();
    }

    /** {@code 7, 9–11}: each number leads to its page. */
    List<Styled> listed(Collection<String> drills, Face face) {
        TreeMap<Integer, String> numbers = new TreeMap<>();
        drills.forEach(drill -> numbers.put(of(drill), drill));
        List<Styled> listed = new ArrayList<>();
        while (!numbers.isEmpty()) {
            Map.Entry<Integer, String> first = numbers.pollFirstEntry();
            int last = first.getKey();
            while (numbers.remove(last + 1) != null) {
                last++;
            }
            boolean more = !numbers.isEmpty();
            listed.add(new Styled(said(first.getKey(), last) + (more ? "," : ""), face, to(first.getValue())));
        }
        return listed;
    }

    private static String said(int first, int last) {
        return last == first ? "" + first : first + (last == first + 1 ? ", " : "–") + last;
    }

    static RunRole to(String drill) {
        return RunRole.PLAIN.to(drill);
    }
}
