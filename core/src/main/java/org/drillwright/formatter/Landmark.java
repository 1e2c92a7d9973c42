package org.drillwright.formatter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.read.SourceTree;
import org.drillwright.read.SourceTree.Entries;
import org.drillwright.read.SourceTree.Entry;
import org.drillwright.read.SourceTree.Items;
import org.drillwright.read.SourceTree.Leaf;
import org.drillwright.source.Span;

/**
 * A text or a closing bracket of a file. Between two landmarks stand only signs of YAML and remarks.
 *
 * @param span where it stands
 * @param below what a remark in a line before it belongs to
 * @param beside what a remark behind it in its line belongs to
 * @param column in which its key or its dash stands; a remark further in belongs to what went before
 * @param takesAll whether each remark before it belongs to it, however far in
 * @param closes whether it is a bracket; then a remark before it stands at the end of what it closes
 * @param open the lists and groups around it that stand in lines of their own, the outermost first
 */
record Landmark(Span span, Object below, Object beside, int column, boolean takesAll, boolean closes, List<Open> open) {

    /** A list or a group of keys, and the column of its dashes or keys. */
    record Open(SourceTree tree, int column) {}

    /** The end of a file: what stands before it belongs to the whole. */
    static Landmark end(String text, Entries root) {
        return new Landmark(Span.at(text.length()), root, root, -1, false, false, List.of());
    }

    /** All of a file, in order. */
    static List<Landmark> of(String text, Entries root) {
        Survey survey = new Survey(text);
        survey.entries(root, root, List.of(), Optional.empty());
        return survey.found;
    }

    private static final class Survey {

        private final String text;
        private final List<Landmark> found = new ArrayList<>();

        Survey(String text) {
            this.text = text;
        }

        /**
         * @param owner the item or entry that the group belongs to
         * @param list whose item the group is, if it is one
         */
        void entries(Entries group, Object owner, List<Open> around, Optional<Items> list) {
            int column = column(group.span().start());
            List<Open> inLine = with(around, new Open(group, column));
            List<Open> open = group.bracketed() ? around : inLine;
            boolean first = true;
            for (Entry entry : group.entries()) {
                boolean begins = first && list.isPresent();
                found.add(new Landmark(
                        entry.key().span(),
                        begins ? owner : entry,
                        entry,
                        begins ? column(list.get().span().start()) : column,
                        begins ? list.get().bracketed() : group.bracketed(),
                        false,
                        open));
                value(entry.value(), entry, open);
                first = false;
            }
            close(group, owner, group.bracketed(), list.isPresent() ? inLine : around);
        }

        private void value(SourceTree value, Entry entry, List<Open> open) {
            if (value instanceof Leaf leaf) {
                found.add(new Landmark(leaf.span(), entry, entry, 0, true, false, open));
            } else if (value instanceof Items items) {
                items(items, entry, open);
            } else if (value instanceof Entries group) {
                entries(group, entry, open, Optional.empty());
            }
        }

        private void items(Items list, Entry owner, List<Open> around) {
            int column = column(list.span().start());
            List<Open> open = list.bracketed() ? around : with(around, new Open(list, column));
            for (SourceTree item : list.items()) {
                if (item instanceof Entries group) {
                    entries(group, item, open, Optional.of(list));
                } else {
                    found.add(new Landmark(item.span(), item, item, column, list.bracketed(), false, open));
                }
            }
            close(list, owner, list.bracketed(), around);
        }

        private void close(SourceTree tree, Object owner, boolean bracketed, List<Open> around) {
            if (bracketed) {
                int end = tree.span().end();
                found.add(new Landmark(new Span(end - 1, end), tree, owner, 0, true, true, around));
            }
        }

        private int column(int at) {
            int start = at;
            while (start > 0 && text.charAt(start - 1) != '\n' && text.charAt(start - 1) != '\r') {
                start--;
            }
            return at - start;
        }

        private static List<Open> with(List<Open> around, Open one) {
            List<Open> open = new ArrayList<>(around);
            open.add(one);
            return open;
        }
    }
}
