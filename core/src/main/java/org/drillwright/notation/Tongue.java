package org.drillwright.notation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A language of the vocabulary, with the endings that its verbs take in a turn (order, statement, gerund). */
public enum Tongue {
    ENGLISH("en") {
        @Override
        Set<String> forms(String verb) {
            return Set.of(verb, third(verb), gerund(verb));
        }

        @Override
        Set<String> participles(String verb) {
            if (verb.endsWith("y") && !isVowel(verb, verb.length() - 2)) {
                return Set.of(cut(verb, 1) + "ied");
            }
            return Set.of(verb.endsWith("e") ? verb + "d" : doubled(verb) + "ed");
        }
    },
    FRENCH("fr") {
        @Override
        Set<String> forms(String verb) {
            String stem = cut(verb, 2);
            if (verb.endsWith("er")) {
                return joined(verb, stem, "ez", "e", "es", "ant", "ent", "ons", stem.endsWith("g") ? "eant" : "ant");
            }
            if (verb.endsWith("prendre")) {
                return joined(verb, cut(verb, 3), "ez", "ant", "ons", "ds", "d", "nent");
            }
            if (verb.endsWith("ttre")) {
                return joined(verb, cut(verb, 3), "tez", "tant", "tons", "s", "", "tent");
            }
            if (verb.endsWith("re")) {
                return joined(verb, stem, "ez", "s", "", "ant", "ent", "ons", doubleStop(stem) ? "ez" : "s");
            }
            return verb.endsWith("oir")
                    ? joined(verb, cut(verb, 5), "evez", "ois", "oit", "evant", "oivent")
                    : irregularIr(verb, stem);
        }

        private Set<String> irregularIr(String verb, String stem) {
            return joined(verb, stem, "issez", "is", "it", "issant", "ez", "ant", stem.endsWith("ven") ? "ez" : "is");
        }

        @Override
        Set<String> participles(String verb) {
            String stem = cut(verb, 2);
            return verb.endsWith("er")
                    ? joined(stem + "e", stem, "ee", "es", "ees")
                    : verb.endsWith("re") ? joined(stem + "u", stem, "ue", "us", "ues") : Set.of();
        }
    },
    ITALIAN("it") {
        @Override
        Set<String> forms(String verb) {
            String stem = cut(verb, 3);
            if (verb.endsWith("are")) {
                return joined(verb, stem, "a", "ate", "ando", "i", "hi", "ano");
            }
            if (verb.endsWith("ire")) {
                return joined(verb, stem, "i", "e", "ite", "endo", "isci", "isce");
            }
            return joined(verb, stem, "i", "e", "ete", "endo", stem.endsWith("i") ? "" : "ono");
        }

        @Override
        Set<String> participles(String verb) {
            return Set.of();
        }
    };

    private final String tag;

    Tongue(String tag) {
        this.tag = tag;
    }

    /** The language's tag (BCP 47). */
    public String tag() {
        return tag;
    }

    /** The forms in which a verb is a thing to do. */
    abstract Set<String> forms(String verb);

    /** The forms in which a verb only describes. */
    abstract Set<String> participles(String verb);

    static Tongue of(String tag) {
        for (Tongue tongue : values()) {
            if (tongue.tag.equals(tag.toLowerCase(Locale.ROOT))) {
                return tongue;
            }
        }
        throw new IllegalArgumentException("no language " + tag);
    }

    private static Set<String> joined(String verb, String stem, String... endings) {
        Set<String> forms = new LinkedHashSet<>(List.of(verb));
        for (String ending : endings) {
            forms.add(stem + ending);
        }
        return forms;
    }

    private static String cut(String verb, int letters) {
        return verb.substring(0, Math.max(0, verb.length() - letters));
    }

    private static boolean doubleStop(String stem) {
        return stem.endsWith("tt");
    }

    private static String third(String verb) {
        if (verb.endsWith("y") && !isVowel(verb, verb.length() - 2)) {
            return cut(verb, 1) + "ies";
        }
        List<String> hissing = new ArrayList<>(List.of("s", "sh", "ch", "x", "o", "z"));
        return hissing.stream().anyMatch(verb::endsWith) ? verb + "es" : verb + "s";
    }

    private static String gerund(String verb) {
        if (verb.endsWith("ie")) {
            return cut(verb, 2) + "ying";
        }
        boolean silent = verb.endsWith("e") && !verb.endsWith("ee") && verb.length() > 2;
        return (silent ? cut(verb, 1) : doubled(verb)) + "ing";
    }

    /** A last consonant is doubled behind a single short vowel: cut, cutting. */
    private static String doubled(String verb) {
        int last = verb.length() - 1;
        boolean doubles = last >= 2
                && !isVowel(verb, last)
                && isVowel(verb, last - 1)
                && !isVowel(verb, last - 2)
                && "wxy".indexOf(verb.charAt(last)) < 0
                && verb.length() <= 4;
        return doubles ? verb + verb.charAt(last) : verb;
    }

    private static boolean isVowel(String word, int at) {
        return at >= 0 && "aeiou".indexOf(word.charAt(at)) >= 0;
    }
}
