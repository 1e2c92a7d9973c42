package org.drillwright.reading;

import java.util.List;
import java.util.Optional;
import org.drillwright.lexicon.Features;
import org.drillwright.meaning.Meant;

/**
 * A part of a sentence as it is divided: each of its words is in just one.
 *
 * @param from its first token
 * @param to behind its last token
 * @param features what the phrase says of itself: form, who does it
 * @param meant what is done; of what another does, what it is if it turns out to be played
 */
record SentencePart(Kind kind, int from, int to, Features features, List<Meant> meant) {

    /** What a part of a sentence is there for. */
    enum Kind {
        /** Something is done. */
        CLAUSE,
        /** What another does, when, why, or what is not to be done. */
        ABOUT,
        /** How it is done, by a closed list. */
        MANNER,
        /** A stance, a measure, a mask, a posture or a call by itself. */
        FRAGMENT,
        /** The number that the caller says. */
        COUNT,
        COMMA,
        COLON,
        AND,
        OR,
        /** A word that nothing accounts for. */
        GAP
    }

    SentencePart {
        meant = List.copyOf(meant);
    }

    boolean parts() {
        return kind == Kind.COMMA || kind == Kind.COLON || kind == Kind.AND || kind == Kind.OR;
    }

    /** Whether something may be done in it. */
    boolean acts() {
        return kind != Kind.ABOUT && !meant.isEmpty();
    }

    /** Whether it tells how something is done, and nothing that is: 'keeping the hand low'. */
    boolean isHow() {
        return kind == Kind.MANNER || (meant.isEmpty() && isForm("ing"));
    }

    /** Whether it tells something of which nothing is played. */
    boolean isBeside() {
        return kind == Kind.ABOUT
                || kind == Kind.MANNER
                || ((kind == Kind.CLAUSE || kind == Kind.FRAGMENT) && meant.isEmpty() && !isCallTo());
    }

    /** Whether it only names those who act from here. */
    boolean isCallTo() {
        return features.has("voc");
    }

    /** Whether it is told as done when another thing is over: 'before lunging'. */
    boolean isLater() {
        return features.has("later");
    }

    /** Whether by it the weapon goes somewhere, and nothing is said of the position that it comes to. */
    boolean moves() {
        return features.is("acts", "moved");
    }

    Optional<String> who() {
        return features.get("who");
    }

    boolean isOfAnother() {
        return features.is("who", "other");
    }

    boolean isForm(String form) {
        return features.is("form", form);
    }
}
