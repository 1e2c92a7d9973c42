package org.drillwright.read;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/** A file's YAML as nodes. No object is ever made from a tag, and the text of a scalar is left as it was written. */
final class YamlDocument {

    private static final Pattern DIRECTIVE = Pattern.compile("^%.*", Pattern.MULTILINE);

    private final MarkOffsets offsets;
    private final Node root;
    private final Supplier<FileKeys> asked;
    private Optional<FileKeys> keys = Optional.empty();

    private YamlDocument(MarkOffsets offsets, Node root, Supplier<FileKeys> keys) {
        this.offsets = offsets;
        this.root = root;
        this.asked = keys;
    }

    /**
     * Composes the one mapping that a file is; empty, with a finding, if it is not one.
     *
     * @param keys that such a file may hold; asked for only where something is wrong
     */
    static Optional<YamlDocument> compose(SourceFile file, Findings findings, Supplier<FileKeys> keys) {
        MarkOffsets offsets = new MarkOffsets(file.text());
        try {
            return first(composer(file.text()), offsets, findings, keys);
        } catch (MarkedYAMLException problem) {
            YamlSlip.explain(problem, offsets, findings, keys.get());
        } catch (NumberFormatException problem) {
            reportEscape(findings);
        } catch (YAMLException problem) {
            findings.error(
                    ReadingRule.BROKEN_YAML.id(),
                    Span.at(0),
                    Message.of(YamlDocument.class, "nested", ReadingLimits.DEPTH),
                    Message.of(YamlDocument.class, "nested.way"));
        }
        return Optional.empty();
    }

    /** The YAML library 2.5 lets this exception through for an escape whose number is too large. */
    private static void reportEscape(Findings findings) {
        Matcher escape = Pattern.compile("\\\\U[89A-Fa-f][0-9A-Fa-f]{7}")
                .matcher(findings.file().text());
        findings.error(
                ReadingRule.BROKEN_YAML.id(),
                escape.find() ? new Span(escape.start(), escape.end()) : Span.at(0),
                Message.of(YamlDocument.class, "escape"),
                Message.of(YamlDocument.class, "escape.way"));
    }

    /** Where the library stops in a text; nowhere if it reads all of it, or stops for another reason than its form. */
    static OptionalInt stop(String text) {
        try {
            Composer composer = composer(text);
            while (composer.checkNode()) {
                composer.getNode();
            }
            return OptionalInt.empty();
        } catch (MarkedYAMLException problem) {
            return OptionalInt.of(YamlSlip.place(problem, new MarkOffsets(text)));
        } catch (YAMLException | NumberFormatException problem) {
            return OptionalInt.empty();
        }
    }

    private static Composer composer(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setNestingDepthLimit(ReadingLimits.DEPTH);
        options.setCodePointLimit(ReadingLimits.FILE_BYTES);
        return new Composer(new ParserImpl(new StreamReader(text), options), new Resolver(), options);
    }

    private static Optional<YamlDocument> first(
            Composer composer, MarkOffsets offsets, Findings findings, Supplier<FileKeys> keys) {
        if (!composer.checkNode()) {
            findings.error(
                    ReadingRule.SEVERAL_IN_ONE_FILE.id(),
                    Span.at(0),
                    Message.of(YamlDocument.class, "empty.file"),
                    Message.of(YamlDocument.class, "empty.file.way"));
            return Optional.empty();
        }
        YamlDocument document = new YamlDocument(offsets, composer.getNode(), keys);
        if (!(document.root instanceof MappingNode)) {
            findings.error(
                    ReadingRule.WRONG_KIND.id(),
                    document.span(document.root),
                    Message.of(YamlDocument.class, "no.keys"),
                    Message.of(YamlDocument.class, "no.keys.way"));
            return Optional.empty();
        }
        if (composer.checkNode()) {
            findings.error(
                    ReadingRule.SEVERAL_IN_ONE_FILE.id(),
                    Span.at(document.offsets.offset(composer.getNode().getStartMark())),
                    Message.of(YamlDocument.class, "second.document"),
                    Message.of(YamlDocument.class, "second.document.way"));
            return Optional.empty();
        }
        document.reportDirectiveBehind(findings);
        return Optional.of(document);
    }

    /** The library passes over a directive behind the document, which belongs to nothing (YAML 1.2.2, 9.1.4). */
    private void reportDirectiveBehind(Findings findings) {
        Matcher directive = directives(span(root).end(), offsets.text().length());
        if (directive.find()) {
            findings.error(
                    ReadingRule.LOST_TEXT.id(),
                    new Span(directive.start(), directive.end()),
                    Message.of(YamlDocument.class, "directive.behind"),
                    Message.of(YamlDocument.class, "directive.behind.way"));
        }
    }

    /** Whether directives stand before the mapping. */
    boolean isDirected() {
        return directives(0, span(root).start()).find();
    }

    private Matcher directives(int from, int to) {
        return DIRECTIVE.matcher(offsets.text()).region(from, to).useAnchoringBounds(false);
    }

    FileKeys keys() {
        keys = keys.or(() -> Optional.of(asked.get()));
        return keys.get();
    }

    MappingNode root() {
        return (MappingNode) root;
    }

    Span span(Node node) {
        int start = offsets.offset(node.getStartMark());
        return new Span(start, Math.max(start, offsets.offset(node.getEndMark())));
    }
}
