package org.drillwright.read;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** Finds the count that was written with a dash before each of its keys, so that each became a count of its own. */
final class DashTooMany {

    private DashTooMany() {}

    /** Tells of the first such dash: the keys behind it are those that the count above lacks. */
    static void report(List<Node> items, NodeReader reader) {
        for (int at = 1; at < items.size(); at++) {
            Set<String> above = keys(items.get(at - 1));
            Set<String> here = keys(items.get(at));
            if (above.equals(Set.of("leader")) && here.contains("follower") && !here.contains("leader")) {
                report(reader.span(items.get(at)), reader.findings());
                return;
            }
        }
    }

    private static void report(Span item, Findings findings) {
        SourceFile file = findings.file();
        String original = file.slice(file.line(file.position(item.start()).line()));
        findings.error(
                ReadingRule.WRONG_KIND.id(),
                item,
                Message.of(DashTooMany.class, "dash.too.many"),
                Message.of(DashTooMany.class, "dash.too.many.way")
                        .then(Mend.advice(original, original.replaceFirst("-", " "))));
    }

    private static Set<String> keys(Node item) {
        return item instanceof MappingNode mapping
                ? mapping.getValue().stream()
                        .map(tuple -> tuple.getKeyNode() instanceof ScalarNode key ? key.getValue() : "")
                        .collect(Collectors.toSet())
                : Set.of();
    }
}
