package org.drillwright.read;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.source.Findings;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** Shows what YAML took away from a text without a word. */
final class LostText {

    private static final String RULE = ReadingRule.LOST_TEXT.id();

    /** Values that are one word out of a list; a remark behind them is a remark. */
    private static final Pattern SINGLE_WORD = Pattern.compile("[^\\s]+");

    /** An anchor or a tag at the beginning of a value, as YAML 1.1 sections 6.8 and 6.9 write them. */
    private static final Pattern SIGN = Pattern.compile("[&!][^\\s,\\[\\]{}]*");

    private static final Pattern REMARK = Pattern.compile("[ \\t]+(#[^\\r\\n]*)");

    private LostText() {}

    static void report(Node node, Span span, Findings findings) {
        reportSign(span, findings);
        if (node instanceof ScalarNode scalar) {
            reportRemark(scalar, span, findings);
        }
    }

    private static void reportSign(Span span, Findings findings) {
        String text = findings.file().text();
        if (!at(text, span.start(), '&', '!')) {
            return;
        }
        Matcher sign = SIGN.matcher(text);
        if (!sign.region(span.start(), text.length()).lookingAt()) {
            return;
        }
        findings.error(
                RULE,
                span,
                Message.of(
                        LostText.class, "lost.words", sign.group(), sign.group().charAt(0)),
                mended(text.substring(span.start(), span.end()).strip(), span, findings));
    }

    /** Whether one of two signs stands there: looked at first, since it almost never does. */
    private static boolean at(String text, int offset, char one, char other) {
        return offset < text.length() && (text.charAt(offset) == one || text.charAt(offset) == other);
    }

    /** A remark behind a plain text of several words is shown, since it may have been meant as text. */
    private static void reportRemark(ScalarNode scalar, Span span, Findings findings) {
        String text = findings.file().text();
        if (scalar.getScalarStyle() != ScalarStyle.PLAIN
                || !at(text, span.end(), ' ', '\t')
                || SINGLE_WORD.matcher(scalar.getValue()).matches()) {
            return;
        }
        Matcher remark = REMARK.matcher(text);
        if (remark.region(span.end(), text.length()).lookingAt()) {
            findings.warning(
                    RULE,
                    new Span(remark.start(1), remark.end(1)),
                    Message.of(LostText.class, "lost.remark", remark.group(1)),
                    Message.of(
                            LostText.class,
                            "lost.remark.way",
                            mended(scalar.getValue() + " " + remark.group(1), span, findings)));
        }
    }

    /** The line with the text between quotes; a text of several lines comes together in one. */
    private static Message mended(String whole, Span span, Findings findings) {
        int number = findings.file().position(span.start()).line();
        Span line = findings.file().line(number);
        String before = findings.file().text().substring(line.start(), span.start());
        String text = whole.replaceAll("\\s+", " ");
        return Mend.advice(findings.file().slice(line), before + Mend.quoted(text));
    }
}
