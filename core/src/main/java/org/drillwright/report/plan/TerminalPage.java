package org.drillwright.report.plan;

import java.util.List;
import java.util.Locale;
import org.drillwright.report.DisplayWidth;
import org.drillwright.wording.Message;

/** Lines for a terminal, none wider than it need be, none that could steer it. */
final class TerminalPage {

    private static final int WIDTH = 78;

    private final Locale language;
    private final StringBuilder text = new StringBuilder();

    TerminalPage(Locale language) {
        this.language = language;
    }

    String said(Message words) {
        return words.in(language);
    }

    TerminalPage line(Message words) {
        return line(said(words));
    }

    TerminalPage line(String words) {
        text.append(DisplayWidth.shown(words).stripTrailing()).append('\n');
        return this;
    }

    TerminalPage gap() {
        text.append('\n');
        return this;
    }

    /** A head and sentences under it, each wrapped; nothing if there are none. */
    TerminalPage list(Message head, List<Message> sentences) {
        if (!sentences.isEmpty()) {
            gap().line(head);
            sentences.forEach(sentence -> wrapped("  - ", sentence));
        }
        return this;
    }

    TerminalPage wrapped(String mark, Message words) {
        return wrapped(mark, said(words));
    }

    /** A paragraph behind a mark; further lines are as deep as the mark is wide. */
    TerminalPage wrapped(String mark, String words) {
        StringBuilder line = new StringBuilder(mark);
        boolean begun = false;
        for (String word : words.strip().split("\\s+")) {
            if (begun && DisplayWidth.of(line.toString()) + 1 + DisplayWidth.of(word) > WIDTH) {
                line(line.toString());
                line = new StringBuilder(" ".repeat(mark.length()));
                begun = false;
            }
            line.append(begun ? " " : "").append(word);
            begun = true;
        }
        return line(line.toString());
    }

    static String padded(String words, int width) {
        return words + " ".repeat(Math.max(0, width - DisplayWidth.of(words)));
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
