package org.drillwright.print.text;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Arabic letters as they stand beside one another: alone, or joined before, behind or on both sides, and lam with alef as one
 * sign (The Unicode Standard, section 9.2). The forms are those that Unicode keeps characters for (Arabic Presentation
 * Forms-A and -B), so that a typeface needs no rules of its own; the letters that have none there are not set.
 */
public final class Joined {

    private static final int ARABIC = 0x0600;

    private static final int LAM = 0x0644;

    /** Joins on both sides and has one form. */
    private static final int TATWEEL = 0x0640;

    /** Keeps letters apart that would join, and is not seen. */
    private static final int NON_JOINER = 0x200C;

    private static final String[] SIDES = {"ISOLATED", "FINAL", "INITIAL", "MEDIAL"};

    /** The forms of one letter, by the sides on which it joins; 0 where it has none. */
    private record Forms(List<Integer> bySide) {

        boolean joinsBefore() {
            return bySide.get(1) != 0;
        }

        boolean joinsBehind() {
            return bySide.get(2) != 0;
        }

        int form(boolean before, boolean behind) {
            return bySide.get((before ? 1 : 0) + (behind ? 2 : 0));
        }
    }

    /** Read only where Arabic letters are set. */
    private static final class Tables {

        static final Map<String, Forms> FORMS = read();

        private static Map<String, Forms> read() {
            Map<String, int[]> forms = new HashMap<>();
            read(forms, 0xFE70, 0xFEFC);
            read(forms, 0xFB50, 0xFBB1);
            read(forms, 0xFBD3, 0xFBE9);
            read(forms, 0xFBFC, 0xFBFF);
            Map<String, Forms> found = new HashMap<>();
            forms.forEach((letters, sides) ->
                    found.put(letters, new Forms(Arrays.stream(sides).boxed().toList())));
            return Map.copyOf(found);
        }

        private static void read(Map<String, int[]> forms, int first, int last) {
            for (int codePoint = first; codePoint <= last; codePoint++) {
                String name = Character.isDefined(codePoint) ? Character.getName(codePoint) : "";
                String letters = Normalizer.normalize(Character.toString(codePoint), Normalizer.Form.NFKC);
                for (int side = 0; side < SIDES.length; side++) {
                    if (name.endsWith(SIDES[side] + " FORM") && isLetter(letters)) {
                        int[] known = forms.computeIfAbsent(letters, key -> new int[SIDES.length]);
                        known[side] = known[side] == 0 ? codePoint : known[side];
                    }
                }
            }
        }

        /** One letter, or lam and alef. */
        private static boolean isLetter(String letters) {
            return letters.codePointCount(0, letters.length()) == 1
                    || (letters.codePointAt(0) == LAM && letters.codePointCount(0, letters.length()) == 2);
        }
    }

    private Joined() {}

    /** A text with its Arabic letters in the forms that they have there, in the order of reading; others as they are. */
    public static String of(String text) {
        if (text.chars().noneMatch(unit -> unit >= ARABIC)) {
            return text;
        }
        List<String> letters = letters(text);
        StringBuilder joined = new StringBuilder();
        for (int at = 0; at < letters.size(); at++) {
            String letter = letters.get(at);
            Optional<Forms> forms = forms(letter);
            if (forms.isPresent()) {
                joined.appendCodePoint(forms.get().form(joinsBefore(letters, at), joinsBehind(letters, at)));
            } else if (letter.codePointAt(0) != NON_JOINER) {
                joined.append(letter);
            }
        }
        return joined.toString();
    }

    /** The code points that a letter is printed with, whatever stands beside it; none if it is no Arabic letter that is set. */
    static List<Integer> formsOf(int codePoint) {
        List<Integer> all = new ArrayList<>();
        if (codePoint >= ARABIC) {
            forms(Character.toString(codePoint)).ifPresent(forms -> {
                for (int form : forms.bySide()) {
                    if (form != 0) {
                        all.add(form);
                    }
                }
            });
        }
        return List.copyOf(all);
    }

    private static List<String> letters(String text) {
        List<String> letters = new ArrayList<>();
        for (int at = 0; at < text.length(); ) {
            int end = at + Character.charCount(text.codePointAt(at));
            if (text.charAt(at) == LAM
                    && end < text.length()
                    && forms(text.substring(at, end + 1)).isPresent()) {
                end++;
            }
            letters.add(text.substring(at, end));
            at = end;
        }
        return letters;
    }

    private static boolean joinsBefore(List<String> letters, int at) {
        return at > 0
                && forms(letters.get(at)).filter(Forms::joinsBefore).isPresent()
                && reachesOn(letters.get(at - 1));
    }

    private static boolean joinsBehind(List<String> letters, int at) {
        return at + 1 < letters.size()
                && forms(letters.get(at)).filter(Forms::joinsBehind).isPresent()
                && reachesBack(letters.get(at + 1));
    }

    private static boolean reachesOn(String letter) {
        return letter.codePointAt(0) == TATWEEL
                || forms(letter).filter(Forms::joinsBehind).isPresent();
    }

    private static boolean reachesBack(String letter) {
        return letter.codePointAt(0) == TATWEEL
                || forms(letter).filter(Forms::joinsBefore).isPresent();
    }

    private static Optional<Forms> forms(String letter) {
        return letter.charAt(0) < ARABIC ? Optional.empty() : Optional.ofNullable(Tables.FORMS.get(letter));
    }
}
