package org.drillwright.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.drillwright.source.Field;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;
import org.drillwright.source.Span;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Reads nodes into texts, lists and mappings, notes the place of each, and reports what is of the wrong kind. */
final class NodeReader {

    private static final Written NO_WORDS = Written.asItStands("", 0);

    private static final Message WRITE_COUNT = Message.of(NodeReader.class, "write.count");

    /** What stands somewhere, or should stand there. */
    private enum Kind {
        TEXT,
        LIST,
        /** As it is asked for. */
        KEYS,
        /** The same as it is found. */
        GROUP,
        REFERENCE;

        Message said() {
            return Message.of(NodeReader.class, "kind." + name().toLowerCase(Locale.ROOT));
        }
    }

    private final YamlDocument document;
    private final Findings findings;
    private final KnownPaths paths;
    private final Map<FieldPath, Field> fields = new HashMap<>();
    private final Set<FieldPath> lost = new HashSet<>();
    private int errorsBeside;
    private final Set<Node> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    /**
     * Reads a file's bytes.
     *
     * @param name the file's name as it is shown
     * @param keys that such a file may hold
     * @param made of the document; nothing of it comes out if the file has an error
     */
    static <T> Reading<T> reading(String name, byte[] bytes, Supplier<FileKeys> keys, Function<NodeReader, T> made) {
        FileText text = FileText.decode(name, bytes);
        Findings findings = new Findings(text.file());
        findings.addAll(text.findings());
        Optional<T> value = Optional.of(text)
                .filter(FileText::usable)
                .flatMap(usable -> YamlDocument.compose(usable.file(), findings, keys))
                .map(document -> made.apply(new NodeReader(document, findings)));
        return new Reading<>(findings.hasError() ? Optional.empty() : value, findings.list());
    }

    NodeReader(YamlDocument document, Findings findings) {
        this(document, findings, new KnownPaths());
    }

    /** @param paths shared by files of one kind */
    NodeReader(YamlDocument document, Findings findings, KnownPaths paths) {
        this.document = document;
        this.findings = findings;
        this.paths = paths;
    }

    Findings findings() {
        return findings;
    }

    FileKeys keys() {
        return document.keys();
    }

    SourcePlaces places() {
        return new SourcePlaces(fields, lost);
    }

    /** Reads what the rest can be judged without; where that gives an error, the value is lost. */
    <T> T losing(FieldPath path, Supplier<T> read) {
        int before = findings.errors();
        T value = read.get();
        lose(path, before);
        return value;
    }

    /** Says that such a value is missing or stands under a key that is not known: it is lost. */
    void losing(FieldPath path, Runnable tell) {
        int before = findings.errors();
        tell.run();
        lose(path, before);
    }

    private void lose(FieldPath path, int errorsBefore) {
        int more = findings.errors() - errorsBefore;
        if (more > 0) {
            lost.add(paths.once(path));
            errorsBeside += more;
        }
    }

    /** Whether there is an error that takes away more than a value without which the rest can be judged. */
    boolean isBroken() {
        return findings.errors() > errorsBeside;
    }

    MappingReader root() {
        seen.add(document.root());
        return new MappingReader(this, document.root(), FieldPath.ROOT);
    }

    Span span(Node node) {
        return document.span(node);
    }

    /** The text of a key in normal form; empty, with a finding, if it is no word that can be seen. */
    Optional<String> keyText(Node key) {
        if (!(key instanceof ScalarNode scalar) || scalar.getValue().isBlank()) {
            findings.error(
                    ReadingRule.WRONG_KIND.id(),
                    span(key),
                    Message.of(NodeReader.class, "key.no.word"),
                    Message.of(NodeReader.class, "key.no.word.way"));
            return Optional.empty();
        }
        LostText.report(key, span(key), findings);
        Written words = trimmed(Normal.form(written(scalar)));
        return HiddenCharacters.report(words, findings) ? Optional.empty() : Optional.of(words.text());
    }

    /** A text: brought to normal form, its ends trimmed, empty or over-long ones reported. */
    Optional<String> text(FieldPath path, Span key, Node node, int longest) {
        if (!(node instanceof ScalarNode scalar)) {
            wrongKind(path, key, node, Kind.TEXT);
            return Optional.empty();
        }
        Written words = trimmed(Normal.form(written(scalar)));
        note(path, key, node, words);
        if (words.text().isEmpty()) {
            findings.error(
                    ReadingRule.TEXT_EMPTY_OR_TOO_LONG.id(),
                    key,
                    Message.of(NodeReader.class, "nothing.after", shown(key)),
                    Message.of(NodeReader.class, "nothing.after.text"));
            return Optional.empty();
        }
        if (HiddenCharacters.report(words, findings)) {
            return Optional.empty();
        }
        if (words.text().length() > longest) {
            findings.error(
                    ReadingRule.TEXT_EMPTY_OR_TOO_LONG.id(),
                    words.span(longest, words.text().length()),
                    Message.of(NodeReader.class, "text.too.long", words.text().length(), longest),
                    Message.of(NodeReader.class, "text.too.long.way"));
            return Optional.empty();
        }
        return Optional.of(words.text());
    }

    /** The items of a list; empty, with a finding, if it is no list. */
    List<Node> items(FieldPath path, Span key, Node node, int most) {
        if (!(node instanceof SequenceNode sequence)) {
            wrongKind(path, key, node, Kind.LIST);
            return List.of();
        }
        note(path, key, node, NO_WORDS);
        if (sequence.getValue().size() > most) {
            findings.error(
                    ReadingRule.TEXT_EMPTY_OR_TOO_LONG.id(),
                    key,
                    Message.of(
                            NodeReader.class,
                            "list.too.long",
                            sequence.getValue().size(),
                            most),
                    Message.of(NodeReader.class, "list.too.long.way"));
            return List.of();
        }
        return sequence.getValue();
    }

    /** A mapping; empty, with a finding, if it is none. */
    Optional<MappingReader> mapping(FieldPath path, Span key, Node node) {
        if (!(node instanceof MappingNode mapping)) {
            wrongKind(path, key, node, Kind.KEYS);
            return Optional.empty();
        }
        note(path, key, node, NO_WORDS);
        return Optional.of(new MappingReader(this, mapping, path));
    }

    /** Texts of a list, each with its place. */
    List<String> texts(FieldPath path, Span key, Node node, int longest) {
        List<String> texts = new ArrayList<>();
        List<Node> items = items(path, key, node, ReadingLimits.ITEMS);
        for (int at = 0; at < items.size(); at++) {
            Node item = items.get(at);
            text(path.item(at), span(item), item, longest).ifPresent(texts::add);
        }
        return texts;
    }

    private void note(FieldPath path, Span key, Node node, Written words) {
        fields.put(paths.once(path), new Field(key, span(node), words));
        if (!seen.add(node)) {
            findings.error(
                    ReadingRule.WRONG_KIND.id(),
                    key,
                    Message.of(NodeReader.class, "reference"),
                    Message.of(NodeReader.class, "reference.way"));
            return;
        }
        LostText.report(node, span(node), findings);
    }

    private Written written(ScalarNode scalar) {
        return ScalarPlaces.find(findings.file(), span(scalar), scalar.getScalarStyle(), scalar.getValue());
    }

    private static Written trimmed(Written words) {
        String text = words.text();
        int from = 0;
        int to = text.length();
        while (from < to && Character.isWhitespace(text.charAt(from))) {
            from++;
        }
        while (to > from && Character.isWhitespace(text.charAt(to - 1))) {
            to--;
        }
        return words.slice(from, to);
    }

    private void wrongKind(FieldPath path, Span key, Node node, Kind wanted) {
        fields.put(paths.once(path), new Field(key, span(node), NO_WORDS));
        if (isNothing(node)) {
            findings.error(
                    ReadingRule.TEXT_EMPTY_OR_TOO_LONG.id(),
                    key,
                    Message.of(NodeReader.class, "nothing.after", shown(key)),
                    path.text().equals("steps")
                            ? Message.of(NodeReader.class, "nothing.after.steps")
                            : Message.of(NodeReader.class, "nothing.after.kind", wanted.said()));
            return;
        }
        findings.error(
                ReadingRule.WRONG_KIND.id(),
                key,
                isItem(path)
                        ? Message.of(
                                NodeReader.class,
                                "item.needs.kind",
                                wanted.said(),
                                kind(node).said())
                        : Message.of(
                                NodeReader.class,
                                "needs.kind",
                                shown(key),
                                wanted.said(),
                                kind(node).said()),
                hint(path, node, wanted));
    }

    private Message hint(FieldPath path, Node node, Kind wanted) {
        SourceFile file = findings.file();
        Span line = file.line(file.position(span(node).start()).line());
        String original = file.slice(line);
        String before = file.text().substring(line.start(), span(node).start());
        String written = file.slice(span(node)).strip().replaceAll("\\s+", " ");
        if (wanted == Kind.LIST) {
            if (isNumbered(node)) {
                return Message.of(NodeReader.class, "slip.numbered")
                        .then(Mend.advice(original, Mend.indent(original) + "-"));
            }
            boolean below = before.isBlank();
            return below
                            || (node.getNodeId() == NodeId.mapping && !written.startsWith("{"))
                            || path.text().equals("steps")
                    ? Message.of(NodeReader.class, "item.dash").then(dashed(original))
                    : Mend.advice(original, before + "[" + written.replaceAll("^[\\[({]+|[\\])}]+$", "") + "]");
        }
        if (wanted == Kind.TEXT && keys().isWord(path) && written.matches("\\[[^,\\[\\]]*\\]")) {
            return Message.of(NodeReader.class, "one.word")
                    .then(Mend.advice(
                            original,
                            before + written.substring(1, written.length() - 1).strip()));
        }
        if (wanted == Kind.TEXT) {
            return Message.of(NodeReader.class, "text.needs.quotes")
                    .then(Mend.advice(original, before + Mend.quoted(written)));
        }
        return path.text().startsWith("steps/")
                ? Message.of(NodeReader.class, "count.says").then(WRITE_COUNT)
                : Message.of(NodeReader.class, "key.and.value");
    }

    private static boolean isNumbered(Node node) {
        return node instanceof MappingNode keys
                && !keys.getValue().isEmpty()
                && keys.getValue().get(0).getKeyNode() instanceof ScalarNode key
                && key.getValue().matches("\\d+");
    }

    private static Message dashed(String original) {
        String indent = Mend.indent(original);
        String text = original.strip()
                .replaceFirst("^[*\u2022\u00b7\u2010-\u2015\u2212]\\s*", "")
                .replaceFirst(",$", "");
        String out = text.startsWith("-") ? indent : indent.substring(Math.min(2, indent.length()));
        return !text.startsWith("steps:") ? Mend.advice(original, out + "- " + text) : WRITE_COUNT;
    }

    private static String oneLine(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.length() > 60 ? line.substring(0, 60) + "…" : line;
    }

    private String shown(Span key) {
        String text = findings.file().slice(key);
        return oneLine(text);
    }

    private static boolean isItem(FieldPath path) {
        return path.text().matches("(.*/)?\\d+");
    }

    private static boolean isNothing(Node node) {
        return node instanceof ScalarNode scalar
                && scalar.getScalarStyle() == ScalarStyle.PLAIN
                && scalar.getValue().isEmpty();
    }

    private static Kind kind(Node node) {
        return switch (node.getNodeId()) {
            case scalar -> Kind.TEXT;
            case sequence -> Kind.LIST;
            case mapping -> Kind.GROUP;
            case anchor -> Kind.REFERENCE;
        };
    }
}
