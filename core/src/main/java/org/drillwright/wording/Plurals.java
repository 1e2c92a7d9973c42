package org.drillwright.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The plural forms of a language, by Unicode's names for them: which of them a number takes. */
public final class Plurals {

    /** The form of every number that no rule speaks of; each language has it. */
    public static final String OTHER = "other";

    /** Those that have a rule, in the order of LDML. */
    private static final List<String> RULED = List.of("zero", "one", "two", "few", "many");

    private static final Map<String, Plurals> READ = new ConcurrentHashMap<>();

    private final Map<String, PluralRule> rules;

    private Plurals(Map<String, PluralRule> rules) {
        this.rules = rules;
    }

    /** Those of a language, from {@code plural.FORM} in the file of this room; English ones where there is no such file. */
    public static Plurals in(Locale language) {
        return READ.computeIfAbsent(language.getLanguage(), tag -> of(Bundle.in(Plurals.class, language)));
    }

    private static Plurals of(Bundle words) {
        Map<String, PluralRule> rules = new LinkedHashMap<>();
        RULED.forEach(
                form -> words.find("plural." + form).map(PluralRule::of).ifPresent(rule -> rules.put(form, rule)));
        return new Plurals(rules);
    }

    /** All forms that the language has. */
    public List<String> forms() {
        List<String> forms = new ArrayList<>(rules.keySet());
        forms.add(OTHER);
        return List.copyOf(forms);
    }

    /** The form that a number takes; that it is less than nothing changes no form. */
    public String form(long number) {
        return rules.entrySet().stream()
                .filter(rule -> rule.getValue().holds(Math.abs(number)))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(OTHER);
    }
}
