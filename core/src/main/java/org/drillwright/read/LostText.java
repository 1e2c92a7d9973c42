package org.drillwright.read;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Span;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.Tag;

/** Shows what YAML took away from a text without a word. */
final class LostText {

    private static final String RULE = ReadingRule.LOST_TEXT.id();

    /** Values that are one word out of a list; a remark behind them is a remark. */
    private static final Pattern SINGLE_WORD = Pattern.compile("[^\\s]+");

    private LostText() {}

    static void report(Node node, FieldPath path, Span span, Findings findings) {
        if (node instanceof ScalarNode scalar) {
            reportSigns(scalar, span, findings);
            reportRemark(scalar, span, findings);
        }
    }

    private static void reportSigns(ScalarNode scalar, Span span, Findings findings) {
        boolean tagged =
                !scalar.getTag().startsWith(Tag.PREFIX) || scalar.getTag().equals(new Tag("!"));
        if (scalar.getAnchor() != null) {
            lost(findings, span, "&" + scalar.getAnchor(), scalar.getValue());
        } else if (tagged) {
            lost(findings, span, scalar.getTag().getValue(), scalar.getValue());
        }
    }

    private static void lost(Findings findings, Span span, String sign, String rest) {
        findings.error(
                RULE,
                span,
                "The words '" + sign + "' are lost: a text cannot begin with '" + sign.charAt(0) + "' in YAML.",
                "Write: " + YamlSlip.quoted(sign + " " + rest));
    }

    /** A remark behind a plain text of several words is shown, since it may have been meant as text. */
    private static void reportRemark(ScalarNode scalar, Span span, Findings findings) {
        if (scalar.getScalarStyle() != ScalarStyle.PLAIN
                || SINGLE_WORD.matcher(scalar.getValue()).matches()) {
            return;
        }
        String text = findings.file().text();
        Matcher remark = Pattern.compile("[ \\t]+(#[^\\r\\n]*)").matcher(text);
        if (remark.region(span.end(), text.length()).lookingAt()) {
            findings.warning(
                    RULE,
                    new Span(remark.start(1), remark.end(1)),
                    "All that follows ' #' is left out: '" + remark.group(1) + "'.",
                    "If it belongs to the text, write "
                            + YamlSlip.quoted(scalar.getValue() + " " + remark.group(1))
                            + "; if it is a remark, give it a line of its own.");
        }
    }
}
