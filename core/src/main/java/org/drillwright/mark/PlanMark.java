package org.drillwright.mark;

import java.math.BigInteger;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.source.Fingerprint;
import org.drillwright.wording.Message;

/**
 * A short mark of what a plan says, such as {@code K7QM-J}: four signs, or five where another plan of the same folder has
 * these four already, and a sign that checks them.
 *
 * <p>The check is the sum of each sign's number times its place, by 31. As 31 is prime, and larger than any place, every
 * wrong sign and every swap of two signs is seen.
 *
 * @param signs 5 or 6 of {@link #ALPHABET}, the last of which checks the others
 */
public record PlanMark(String signs) {

    /** Figures and letters without 0 I L O U; their number is prime. */
    public static final String ALPHABET = "123456789ABCDEFGHJKMNPQRSTVWXYZ";

    /** How many signs come before the one that checks them. */
    public static final int SHORT = 4;

    /** The same where the short one is taken. */
    public static final int LONG = 5;

    public PlanMark {
        if (!isMark(signs)) {
            throw new IllegalArgumentException("'" + signs + "' is no mark of a plan");
        }
    }

    /** @param length {@link #SHORT} or {@link #LONG} */
    public static PlanMark of(String text, int length) {
        BigInteger base = BigInteger.valueOf(ALPHABET.length());
        BigInteger rest = new BigInteger(1, Fingerprint.of(text));
        StringBuilder signs = new StringBuilder();
        while (signs.length() < length) {
            signs.append(ALPHABET.charAt(rest.mod(base).intValue()));
            rest = rest.divide(base);
        }
        return new PlanMark(signs.toString() + check(signs.toString()));
    }

    private static char check(String signs) {
        int sum = 0;
        for (int at = 0; at < signs.length(); at++) {
            sum += (at + 1) * ALPHABET.indexOf(signs.charAt(at));
        }
        return ALPHABET.charAt(sum % ALPHABET.length());
    }

    private static boolean isMark(String signs) {
        int checked = signs.length() - 1;
        return (checked == SHORT || checked == LONG)
                && signs.chars().allMatch(sign -> ALPHABET.indexOf(sign) >= 0)
                && signs.charAt(checked) == check(signs.substring(0, checked));
    }

    /** A mark as somebody wrote it: small letters, a hyphen or spaces do no harm. Nothing if it is none. */
    public static Optional<PlanMark> read(String written) {
        return Stream.of(written.toUpperCase(Locale.ROOT).replaceAll("[\\s\\u00A0\\p{Pd}]+", ""))
                .filter(PlanMark::isMark)
                .map(PlanMark::new)
                .findFirst();
    }

    /** What is wrong with what somebody wrote for a mark: a part of a sentence. */
    public static Message wrongWith(String written) {
        String signs = written.toUpperCase(Locale.ROOT).replaceAll("[\\s\\u00A0\\p{Pd}]+", "");
        String strange = signs.codePoints()
                .filter(sign -> ALPHABET.indexOf(sign) < 0)
                .mapToObj(Character::toString)
                .limit(1)
                .collect(Collectors.joining());
        if (!strange.isEmpty()) {
            return Message.of(PlanMark.class, "plan.strange", strange);
        }
        return signs.length() == SHORT + 1 || signs.length() == LONG + 1
                ? Message.of(PlanMark.class, "plan.wrong")
                : Message.of(PlanMark.class, "plan.length");
    }

    /** As it is printed: {@code K7QM-J}. */
    public String shown() {
        int checked = signs.length() - 1;
        return signs.substring(0, checked) + "-" + signs.charAt(checked);
    }
}
