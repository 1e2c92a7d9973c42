package org.drillwright.read;

import java.util.List;
import java.util.Optional;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** A file's texts, lists and groups of keys with their places, for who works on the writing itself. */
public sealed interface SourceTree {

    /** From the first sign; where it ends is sure only for a text and between brackets. */
    Span span();

    /** A text as YAML gives it, its ends not yet trimmed. */
    record Leaf(Span span, String text) implements SourceTree {}

    /** @param bracketed whether the list stands between brackets rather than below one another */
    record Items(Span span, List<SourceTree> items, boolean bracketed) implements SourceTree {
        public Items {
            items = List.copyOf(items);
        }
    }

    /** @param bracketed whether the keys stand between braces rather than below one another */
    record Entries(Span span, List<Entry> entries, boolean bracketed) implements SourceTree {
        public Entries {
            entries = List.copyOf(entries);
        }
    }

    /** A key and what stands behind it. */
    record Entry(Leaf key, SourceTree value) {}

    /** The tree of a file that the readers found nothing wrong with; empty if there is none. */
    static Optional<Entries> of(SourceFile file) {
        return YamlDocument.compose(file, new Findings(file), () -> FileKeys.NONE)
                .map(document -> entries(document.root(), document));
    }

    /** Whether a file that the readers found nothing wrong with says something to YAML itself, such as {@code %YAML 1.2}. */
    static boolean isDirected(SourceFile file) {
        return YamlDocument.compose(file, new Findings(file), () -> FileKeys.NONE)
                .filter(YamlDocument::isDirected)
                .isPresent();
    }

    private static SourceTree tree(Node node, YamlDocument document) {
        if (node instanceof MappingNode mapping) {
            return entries(mapping, document);
        }
        if (node instanceof SequenceNode sequence) {
            List<SourceTree> items = sequence.getValue().stream()
                    .map(item -> tree(item, document))
                    .toList();
            return new Items(document.span(node), items, sequence.getFlowStyle() == FlowStyle.FLOW);
        }
        return leaf(node, document);
    }

    private static Entries entries(MappingNode mapping, YamlDocument document) {
        List<Entry> entries =
                mapping.getValue().stream().map(tuple -> entry(tuple, document)).toList();
        return new Entries(document.span(mapping), entries, mapping.getFlowStyle() == FlowStyle.FLOW);
    }

    private static Entry entry(NodeTuple tuple, YamlDocument document) {
        return new Entry(leaf(tuple.getKeyNode(), document), tree(tuple.getValueNode(), document));
    }

    private static Leaf leaf(Node node, YamlDocument document) {
        return new Leaf(document.span(node), node instanceof ScalarNode scalar ? scalar.getValue() : "");
    }
}
