package org.drillwright.print.command.editor.protocol;

import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/** Places of a text as the protocol counts them: lines and UTF-16 units from 0. */
record Positions(SourceFile text) {

    Range range(Span span) {
        return new Range(position(span.start()), position(span.end()));
    }

    Position position(int offset) {
        int line = text.position(offset).line();
        Span whole = text.line(line);
        int within = Math.min(offset, text.text().length()) - whole.start();
        return new Position(line - 1, Math.min(within, whole.length()));
    }

    /** The offset of a position; one behind the end of its line, or of the text, counts as that end. */
    int offset(Position position) {
        if (position.getLine() >= text.lineCount()) {
            return text.text().length();
        }
        Span line = text.line(Math.max(0, position.getLine()) + 1);
        return line.start() + Math.min(Math.max(0, position.getCharacter()), line.length());
    }

    Span span(Range range) {
        int start = offset(range.getStart());
        return new Span(start, Math.max(start, offset(range.getEnd())));
    }
}
