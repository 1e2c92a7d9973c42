package org.drillwright.formatter;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.read.ReadingLimits;
import org.drillwright.read.Shape;
import org.drillwright.read.SourceTree;
import org.drillwright.read.SourceTree.Entries;
import org.drillwright.read.SourceTree.Entry;
import org.drillwright.read.SourceTree.Items;
import org.drillwright.read.SourceTree.Leaf;

/** Writes a drill's tree in the one layout. */
final class Layout {

    /** Columns of a line; a longer text is folded. */
    private static final int WIDTH = 100;

    /** The phrase is a part of its own; before it stands what the drill is, behind it the rest. */
    private static final String PHRASE_BEGINS = "start";

    private static final String PHRASE_ENDS = "closing";

    private final Shape.Group shape;
    private final Remarks remarks;
    private final StringBuilder text = new StringBuilder();

    Layout(Shape.Group shape, Remarks remarks) {
        this.shape = shape;
        this.remarks = remarks;
    }

    /** The whole file, its lines ended by LF. */
    String of(Entries root) {
        if (!remarks.header().isEmpty()) {
            remarks(remarks.header(), "");
            text.append('\n');
        }
        int part = -1;
        for (Entry entry : ordered(root, shape)) {
            boolean remarked = !remarks.above(entry).isEmpty();
            if (part >= 0 && (remarked || part(entry) != part)) {
                text.append('\n');
            }
            part = part(entry);
            remarks(remarks.above(entry), "");
            entry(entry, shape, "", "");
        }
        if (!remarks.below(root).isEmpty()) {
            text.append('\n');
            remarks(remarks.below(root), "");
        }
        return text.toString();
    }

    private int part(Entry entry) {
        List<String> order = List.copyOf(shape.keys().keySet());
        int at = order.indexOf(name(entry));
        return at < order.indexOf(PHRASE_BEGINS) ? 0 : at <= order.indexOf(PHRASE_ENDS) ? 1 : 2;
    }

    /** In the order of the reader; keys of the author's own stay as they stand, behind the others. */
    private static List<Entry> ordered(Entries group, Shape.Group shape) {
        List<String> order = List.copyOf(shape.keys().keySet());
        return group.entries().stream()
                .sorted(Comparator.comparingInt(entry -> {
                    int at = order.indexOf(name(entry));
                    return at < 0 ? order.size() : at;
                }))
                .toList();
    }

    private static String name(Entry entry) {
        return entry.key().text().strip();
    }

    private void remarks(List<String> lines, String indent) {
        lines.forEach(line -> text.append(line.isEmpty() ? "" : indent + line).append('\n'));
    }

    /**
     * Writes a key and its value.
     *
     * @param lead what stands before the key in its line
     * @param indent of the key, as blanks
     */
    private void entry(Entry entry, Shape.Group group, String lead, String indent) {
        Shape value = Optional.ofNullable(group.keys().get(name(entry)))
                .or(group::others)
                .orElse(new Shape.Text(ReadingLimits.LINE_TEXT));
        String key = lead + Scalars.of(name(entry), false, true) + ":";
        if (entry.value() instanceof Leaf leaf) {
            leaf(leaf, value, key + " ", indent + "  ", remarks.beside(entry));
        } else if (entry.value() instanceof Items items && value instanceof Shape.Items shapes) {
            items(items, shapes, key, indent, remarks.beside(entry));
        } else if (entry.value() instanceof Entries inner) {
            group(inner, value, key, indent + "  ", remarks.beside(entry));
        }
    }

    private void group(Entries group, Shape shape, String key, String indent, Optional<String> beside) {
        Shape.Group shapes = shape instanceof Shape.Either either ? either.group() : (Shape.Group) shape;
        Optional<String> line = oneLine(group, shape).filter(turn -> length(key + " " + turn) <= WIDTH);
        text.append(key)
                .append(line.map(turn -> " " + turn).orElse(""))
                .append(behind(beside))
                .append('\n');
        if (line.isEmpty()) {
            for (Entry entry : ordered(group, shapes)) {
                remarks(remarks.above(entry), indent);
                entry(entry, shapes, indent, indent);
            }
        }
        remarks(remarks.below(group), indent);
    }

    /** A turn that says one thing and means another stands in one line if it fits; other groups never do. */
    private Optional<String> oneLine(Entries group, Shape shape) {
        if (group.entries().isEmpty()) {
            return Optional.of("{}");
        }
        boolean remarked = remarks.any(group) || group.entries().stream().anyMatch(remarks::any);
        if (remarked || !(shape instanceof Shape.Either either)) {
            return Optional.empty();
        }
        return Optional.of(ordered(group, either.group()).stream()
                .map(entry -> name(entry) + ": " + Scalars.of(words(entry.value()), true, true))
                .collect(Collectors.joining(", ", "{", "}")));
    }

    private void items(Items list, Shape.Items shapes, String key, String indent, Optional<String> beside) {
        String inner = indent + "  ";
        Optional<String> line = oneLine(list, shapes).filter(items -> length(key + " " + items) <= WIDTH);
        text.append(key)
                .append(line.map(items -> " " + items).orElse(""))
                .append(behind(beside))
                .append('\n');
        if (line.isEmpty()) {
            list.items().forEach(item -> item(item, shapes.item(), inner));
        }
        remarks(remarks.below(list), inner);
    }

    /** Short words stand in one line, unless a remark belongs to one of them. Sentences and counts stand below one another. */
    private Optional<String> oneLine(Items list, Shape.Items shapes) {
        if (list.items().isEmpty()) {
            return Optional.of("[]");
        }
        boolean words = shapes.item() instanceof Shape.Word
                || (shapes.item() instanceof Shape.Text line && line.longest() <= ReadingLimits.SHORT_TEXT);
        boolean remarked = remarks.any(list) || list.items().stream().anyMatch(remarks::any);
        if (!words || remarked) {
            return Optional.empty();
        }
        return Optional.of(list.items().stream()
                .map(item -> Scalars.of(words(item), true, shapes.item() instanceof Shape.Text))
                .collect(Collectors.joining(", ", "[", "]")));
    }

    private void item(SourceTree item, Shape shape, String indent) {
        remarks(remarks.above(item), indent);
        if (item instanceof Leaf leaf) {
            leaf(leaf, shape, indent + "- ", indent + "  ", remarks.beside(item));
        } else if (item instanceof Entries group && shape instanceof Shape.Group shapes) {
            remarks.beside(item).ifPresent(line -> remarks(List.of(line), indent));
            count(group, shapes, indent);
        }
    }

    /** A group of keys behind a dash. */
    private void count(Entries group, Shape.Group shapes, String indent) {
        String inner = indent + "  ";
        String lead = indent + "- ";
        if (group.entries().isEmpty()) {
            text.append(lead).append("{}\n");
        }
        for (Entry entry : ordered(group, shapes)) {
            boolean first = !lead.equals(inner);
            remarks(remarks.above(entry), first ? indent : inner);
            entry(entry, shapes, lead, inner);
            lead = inner;
        }
        remarks(remarks.below(group), inner);
    }

    /**
     * Writes a text.
     *
     * @param lead what stands before it in its line
     * @param indent of the lines below, if it needs any
     */
    private void leaf(Leaf leaf, Shape shape, String lead, String indent, Optional<String> beside) {
        String words = words(leaf);
        boolean isText = shape instanceof Shape.Text || shape instanceof Shape.Either;
        String line = Scalars.of(words, false, isText);
        if (beside.isPresent() && line.equals(words) && words.contains(" ")) {
            line = Scalars.quoted(words);
        }
        List<String> lines = below(words, length(lead + line), WIDTH - indent.length());
        String sign = lines.isEmpty() ? line : words.contains("\n") ? "|-" : ">-";
        text.append(lead).append(sign).append(behind(beside)).append('\n');
        lines.forEach(one -> text.append(one.isEmpty() ? "" : indent + one).append('\n'));
    }

    /** The lines of a text that is written below its key; none if it is not. */
    private static List<String> below(String words, int length, int width) {
        if (words.contains("\t") || words.contains("\r")) {
            return List.of();
        }
        if (words.contains("\n")) {
            List<String> lines = words.lines().toList();
            return lines.stream().anyMatch(line -> line.endsWith(" ")) ? List.of() : lines;
        }
        boolean tooLong = length > WIDTH && words.contains(" ");
        return tooLong ? Folding.lines(words, width) : List.of();
    }

    private static String words(SourceTree tree) {
        return tree instanceof Leaf leaf ? leaf.text().strip() : "";
    }

    private static String behind(Optional<String> remark) {
        return remark.map(text -> " " + text).orElse("");
    }

    private static int length(String line) {
        return line.codePointCount(0, line.length());
    }
}
