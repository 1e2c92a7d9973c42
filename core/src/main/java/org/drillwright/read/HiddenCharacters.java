package org.drillwright.read;

import org.drillwright.source.DirectionMarks;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** Refuses characters that cannot be seen but change what is read or shown. */
final class HiddenCharacters {

    private HiddenCharacters() {}

    static void report(Findings findings) {
        String text = findings.file().text();
        int found = 0;
        int length;
        for (int at = 0; at < text.length() && found < ReadingLimits.HIDDEN; at += length) {
            int point = text.codePointAt(at);
            length = Character.charCount(point);
            int here = at;
            boolean turns = DirectionMarks.turns(point, () -> line(findings.file(), here));
            if (turns || isHidden(point)) {
                found++;
                report(point, turns, new Span(at, at + length), findings);
            }
        }
    }

    /** Looks at a text as it was read, for an escape can write what stands nowhere in the file; says if it found one. */
    static boolean report(Written words, Findings findings) {
        String text = words.text();
        int length;
        for (int at = 0; at < text.length(); at += length) {
            int point = text.codePointAt(at);
            length = Character.charCount(point);
            boolean turns = DirectionMarks.turns(point, () -> text);
            if (turns || isHidden(point)) {
                report(point, turns, words.span(at, at + length), findings);
                return true;
            }
        }
        return false;
    }

    private static String line(SourceFile file, int at) {
        return file.slice(file.line(file.position(at).line()));
    }

    private static void report(int point, boolean turns, Span span, Findings findings) {
        findings.error(
                ReadingRule.NOT_PLAIN_TEXT.id(),
                span,
                Message.of(
                        HiddenCharacters.class,
                        "hidden.character",
                        String.format("U+%04X", point),
                        turns ? Message.of(HiddenCharacters.class, "hidden.turns") : nature(point)),
                Message.of(HiddenCharacters.class, "hidden.character.way"));
    }

    private static boolean isHidden(int point) {
        boolean control = Character.isISOControl(point) && point != '\t' && point != '\n' && point != '\r';
        return control || isNoCharacter(point) || endsLine(point) || point == 0xFEFF;
    }

    /** Line ends that YAML 1.1 obeys and most editors don't show. */
    private static boolean endsLine(int point) {
        return point == 0x2028 || point == 0x2029;
    }

    private static boolean isNoCharacter(int point) {
        return (point & 0xFFFE) == 0xFFFE
                || (point >= 0xFDD0 && point <= 0xFDEF)
                || (point <= 0xFFFF && Character.isSurrogate((char) point));
    }

    private static Message nature(int point) {
        if (endsLine(point)) {
            return Message.of(HiddenCharacters.class, "hidden.ends.line");
        }
        return Message.of(HiddenCharacters.class, Character.isISOControl(point) ? "hidden.control" : "hidden.none");
    }
}
