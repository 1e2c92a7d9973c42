package org.drillwright.mark;

import java.math.BigInteger;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.source.Fingerprint;
import org.drillwright.wording.Message;

/**
 * A short mark of what a card says, such as {@code 7K3M-P9RX}: cards that say the same have the same mark, and a changed
 * word gives another. It is taken from the SHA-256 of {@link CardForm}.
 *
 * @param signs 8 of {@link #ALPHABET}
 */
public record PrintMark(String signs) {

    /**
     * Of look-alikes (0 O Q D, 1 I L, 2 Z, 5 S, 8 B, 6 G, U V) none or one is in it, for a card is read at arm's length,
     * worn and in poor light; no vowel is, so that no mark is a word. 18 signs make 11 thousand million marks: of a
     * thousand drills two share one about once in twenty thousand schools, and that is found.
     */
    public static final String ALPHABET = "34679CFHJKMNPRTWXY";

    /** How many signs a mark has. */
    public static final int LENGTH = 8;

    private static final BigInteger BASE = BigInteger.valueOf(ALPHABET.length());

    public PrintMark {
        if (signs.length() != LENGTH || signs.chars().anyMatch(sign -> ALPHABET.indexOf(sign) < 0)) {
            throw new IllegalArgumentException("'" + signs + "' is no mark");
        }
    }

    /** The mark of the card of a drill in a school. */
    public static PrintMark of(Drill drill, School school) {
        BigInteger rest = new BigInteger(1, Fingerprint.of(CardForm.of(drill, school)));
        StringBuilder signs = new StringBuilder();
        while (signs.length() < LENGTH) {
            signs.append(ALPHABET.charAt(rest.mod(BASE).intValue()));
            rest = rest.divide(BASE);
        }
        return new PrintMark(signs.toString());
    }

    /** Whether two drills' cards say the same. */
    public static boolean saysTheSame(Drill one, Drill other, School school) {
        return CardForm.of(one, school).equals(CardForm.of(other, school));
    }

    /** A mark as somebody wrote it: small letters, a hyphen or spaces do no harm. Nothing if it is none. */
    public static Optional<PrintMark> read(String written) {
        String signs = bare(written);
        boolean mark = signs.length() == LENGTH && strange(signs).isEmpty();
        return mark ? Optional.of(new PrintMark(signs)) : Optional.empty();
    }

    /** What is wrong with what somebody wrote for a mark: one sentence. */
    public static Message wrongWith(String written) {
        String signs = bare(written);
        String strange = strange(signs);
        return strange.isEmpty()
                ? Message.of(PrintMark.class, "card.length", LENGTH, written, signs.length())
                : Message.of(PrintMark.class, "card.strange", strange, String.join(" ", ALPHABET.split("")));
    }

    private static String bare(String written) {
        return written.toUpperCase(Locale.ROOT).replaceAll("[\\s\\u00A0\\p{Pd}]+", "");
    }

    /** The first sign that is in no mark. */
    private static String strange(String signs) {
        return signs.codePoints()
                .filter(sign -> ALPHABET.indexOf(sign) < 0)
                .mapToObj(Character::toString)
                .findFirst()
                .orElse("");
    }

    /** As it is printed: {@code 7K3M-P9RX}. */
    public String shown() {
        return signs.substring(0, LENGTH / 2) + "-" + signs.substring(LENGTH / 2);
    }
}
