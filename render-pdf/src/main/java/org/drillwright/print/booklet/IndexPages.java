package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Block;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Table;
import org.drillwright.print.page.Type;

/**
 * Words with the pages of the drills that say them.
 *
 * @param pages of each drill, by its id
 */
record IndexPages(Map<String, Integer> pages, Type type, double width, Labels labels) {

    /** A word that more drills say than this share of all leads nowhere. */
    private static final double EVERYWHERE = 2.0 / 3;

    IndexPages {
        pages = Map.copyOf(pages);
    }

    void lay(Index index, Flow flow) {
        flow.turn();
        flow.add(type.times(1.6).title(labels.text(Label.INDEX_TITLE), width));
        table(Label.FUNDAMENTALS, index.fundamentals(), flow);
        flow.add(Block.space(type.size()));
        table(Label.TERMS, index.terms(), flow);
    }

    private void table(Label head, Map<String, Set<String>> words, Flow flow) {
        Table table = Table.shared(type, width, 0, 2, 3);
        List<Block> rows = new ArrayList<>();
        words.forEach((word, drills) -> rows.add(table.row(List.of(word, pages(drills)))));
        if (!rows.isEmpty()) {
            flow.table(table.head(List.of(labels.text(head), labels.text(Label.PAGES))), rows);
        }
    }

    /** {@code 7, 9–11}. */
    private String pages(Set<String> drills) {
        if (drills.size() > EVERYWHERE * pages.size()) {
            return labels.text(Label.EVERYWHERE);
        }
        TreeSet<Integer> numbers = new TreeSet<>();
        drills.forEach(drill -> numbers.add(pages.getOrDefault(drill, 1)));
        StringBuilder said = new StringBuilder();
        while (!numbers.isEmpty()) {
            int first = numbers.pollFirst();
            int last = first;
            while (numbers.remove(last + 1)) {
                last++;
            }
            said.append(said.isEmpty() ? "" : ", ").append(first);
            if (last > first) {
                said.append(last == first + 1 ? ", " : "–").append(last);
            }
        }
        return said.toString();
    }
}
