package org.drillwright.print.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.text.Joined;
import org.drillwright.print.text.Shaped;
import org.drillwright.print.text.Stretch;

/**
 * What is placed in one piece: a character, or a word whose letters take form and place from one another.
 *
 * @param codePoint the character; of a word its first
 * @param word in its form; empty for a character
 * @param says the letters of a word
 */
record Letter(FontFace font, int codePoint, Optional<Shaped> word, String says) {

    /** A run in the order of reading. */
    static List<Letter> of(String run, FaceChain face) {
        List<Letter> letters = new ArrayList<>();
        for (Stretch stretch : Stretch.of(run)) {
            if (stretch.shaped()) {
                String word = stretch.text();
                FontFace font = face.with(word);
                letters.add(new Letter(font, word.codePointAt(0), Optional.of(font.shape(word)), word));
            } else {
                Joined.of(stretch.text())
                        .codePoints()
                        .forEach(one -> letters.add(new Letter(face.with(one), one, Optional.empty(), "")));
            }
        }
        return letters;
    }

    /** The same in another form, as a bracket has when it is turned round. */
    Letter turned(int other) {
        return word.isPresent() || other == codePoint ? this : new Letter(font, other, word, says);
    }

    double advance() {
        return word.map(Shaped::advance).orElseGet(() -> font.advance(codePoint));
    }

    /** What is added between this and the next. */
    double kerning(Letter next) {
        boolean single = word.isEmpty() && next.word.isEmpty();
        return single && font == next.font ? font.kerning(codePoint, next.codePoint) : 0;
    }
}
