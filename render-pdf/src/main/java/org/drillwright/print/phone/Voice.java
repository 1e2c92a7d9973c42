package org.drillwright.print.phone;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.text.Lettering;
import org.drillwright.print.text.Wording;
import org.drillwright.wording.Direction;
import org.drillwright.wording.Message;

/** All that the page says of its own, in its language, and how it lets others speak in theirs. */
final class Voice {

    private final Language language;
    private final Labels labels;
    private final PhoneTexts words;

    Voice(Labels labels) {
        this.language = labels.language();
        this.labels = labels;
        this.words = new PhoneTexts(language);
    }

    Labels labels() {
        return labels;
    }

    Locale locale() {
        return language.locale();
    }

    String tag() {
        return language.word();
    }

    /** Which way the page is read. */
    Direction direction() {
        return Direction.of(locale());
    }

    String text(PhoneText word, Object... values) {
        return words.text(word, values);
    }

    String text(Label label, Object... values) {
        return labels.text(label, values);
    }

    /** What stands before words so that who hears them knows whose they are. */
    String before(Label label) {
        return words.text(PhoneText.SAID, labels.text(label)) + " ";
    }

    /** Words for the script: attributes, each with its value after it. */
    List<String> attributes(PhoneText... texts) {
        return Stream.of(texts)
                .flatMap(word -> Stream.of("data-" + word.key().replace('.', '-'), text(word)))
                .toList();
    }

    /** A number of drills or counts. */
    String number(PhoneText what, int number) {
        return words.counted(what, number);
    }

    String capitalised(String name) {
        return Message.plain(name).capital().in(locale());
    }

    /**
     * What an author wrote, with its language and direction where either is not that of what stands round it.
     *
     * @param tag of the language of the drill (BCP 47); letters of another script tell their own
     * @param rightToLeft whether what stands round it is read from right to left
     */
    void author(Html html, String written, String tag, boolean rightToLeft) {
        String clean = Wording.clean(written);
        String language = Lettering.language(clean).orElse(Lettering.tells(tag) ? tag() : tag);
        boolean turned = Lettering.isRightToLeft(clean);
        if (language.equals(tag()) && turned == rightToLeft) {
            html.words(clean);
        } else {
            html.put("span", clean, "lang", language, "dir", turned ? "rtl" : "ltr");
        }
    }

    /** The same among the page's own words. */
    void author(Html html, String written, String tag) {
        author(html, written, tag, direction().isRightToLeft());
    }
}
