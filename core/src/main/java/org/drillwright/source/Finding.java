package org.drillwright.source;

import org.drillwright.wording.Message;

/**
 * Something found in a file.
 *
 * @param rule the id of the rule that found it
 * @param file the file it stands in
 * @param span the very words, empty where something is absent
 * @param what one sentence: what is the matter
 * @param wayOut one sentence of why, or of the way out; may be empty
 */
public record Finding(String rule, Severity severity, SourceFile file, Span span, Message what, Message wayOut) {

    /** What is the matter and the way out, as one text. */
    public Message words() {
        return what.then(wayOut);
    }

    /** Where the finding begins. */
    public LineColumn position() {
        return file.position(span.start());
    }

    public Finding withSeverity(Severity other) {
        return new Finding(rule, other, file, span, what, wayOut);
    }
}
