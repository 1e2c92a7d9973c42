package org.drillwright.print.sheet;

import java.time.LocalDate;
import org.drillwright.model.Language;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.sheet.wall.WallText;
import org.drillwright.print.sheet.wall.WallTexts;
import org.drillwright.wording.Bundle;
import org.drillwright.wording.Message;

/** The words of the sheets for the hand in one language, from a file. */
public final class HandWords {

    private final WallTexts evening;
    private final Labels labels;
    private final Bundle words;

    private HandWords(Language language) {
        this.evening = WallTexts.in(language);
        this.labels = Labels.in(language);
        this.words = Bundle.in(HandWords.class, language.locale());
    }

    public static HandWords in(Language language) {
        return new HandWords(language);
    }

    /** With {@code {0}}, {@code {1}} … filled in. */
    public String text(HandWord word, Object... values) {
        return words.text(word.key(), values);
    }

    /** The same for a number, which fills the first gap. */
    public String counted(HandWord word, long count, Object... more) {
        return words.counted(word.key(), count, more);
    }

    /** Such as {@code Lesson of Wednesday 2026-12-02}. */
    public String of(HandWord what, LocalDate date) {
        return text(what, evening.within(date));
    }

    /** The words of the sheets that hang. */
    WallTexts evening() {
        return evening;
    }

    /** The words of the cards. */
    Labels labels() {
        return labels;
    }

    /** Whole and parts, such as {@code 1.5} or {@code 1,5}. */
    String metres(int centimetres) {
        return Message.metres(centimetres).in(evening.locale());
    }

    /** At the foot of whatever hangs, so that it can be named when the class is recorded; nothing without a mark. */
    public String mark(String mark) {
        return mark.isEmpty() ? "" : evening.text(WallText.PLAN, mark);
    }
}
