package org.drillwright.check.mutation;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words of the trade that change places with others; a word of two languages stands with one before it. */
final class Words {

    static final Map<String, String> SIDES = Map.ofEntries(
            Map.entry("inside", "outside"),
            Map.entry("outside", "inside"),
            Map.entry("intérieure", "extérieure"),
            Map.entry("extérieure", "intérieure"),
            Map.entry("interna", "esterna"),
            Map.entry("esterna", "interna"));

    static final Map<String, String> HEIGHTS = Map.ofEntries(
            Map.entry("high", "low"),
            Map.entry("low", "high"),
            Map.entry("haute", "basse"),
            Map.entry("basse", "haute"),
            Map.entry("alta", "bassa"),
            Map.entry("bassa", "alta"),
            Map.entry("línea alta", "línea baja"),
            Map.entry("línea baja", "línea alta"));

    /** Targets of the sabre that different parries close (Waite 1880, p. 30-58; quinte from memory). */
    static final Map<String, String> SABRE_TARGETS = Map.ofEntries(
            Map.entry("inside cheek", "flank"),
            Map.entry("outside cheek", "chest"),
            Map.entry("inside", "outside"),
            Map.entry("outside", "inside"),
            Map.entry("chest", "flank"),
            Map.entry("flank", "chest"),
            Map.entry("head", "flank"),
            Map.entry("testa", "fianco"),
            Map.entry("guancia interna", "fianco"));

    /** To a position that closes another line (table of positions: Britannica, Warford 1884; sabre: Waite 1880). */
    static final Map<String, String> POSITIONS = Map.ofEntries(
            Map.entry("quarte", "sixte"),
            Map.entry("carte", "sixte"),
            Map.entry("sixte", "quarte"),
            Map.entry("tierce", "quarte"),
            Map.entry("octave", "septime"),
            Map.entry("septime", "octave"),
            Map.entry("seconde", "septime"),
            Map.entry("prime", "octave"),
            Map.entry("quinte", "octave"),
            Map.entry("quarta", "sesta"),
            Map.entry("sesta", "quarta"),
            Map.entry("terza", "quarta"),
            Map.entry("seconda", "settima"));

    static final Map<String, String> SABRE_POSITIONS = Map.ofEntries(
            Map.entry("quarte", "tierce"),
            Map.entry("carte", "tierce"),
            Map.entry("tierce", "quarte"),
            Map.entry("quinte", "tierce"),
            Map.entry("prime", "tierce"),
            Map.entry("seconde", "quarte"),
            Map.entry("quinta", "terza"),
            Map.entry("quarta", "terza"),
            Map.entry("terza", "quarta"),
            Map.entry("en quinta", "en tercera"));

    /** The start's measure, to one that is a foot action further. */
    static final Map<String, String> MEASURES = Map.ofEntries(
            Map.entry("at advance-lunge distance", "out of distance"),
            Map.entry("advance-lunge distance", "out of distance"),
            Map.entry("lunge distance", "advance-lunge distance"),
            Map.entry("à distance de marche-fente", "hors de distance"),
            Map.entry("à distance de fente", "à distance de marche-fente"),
            Map.entry("a misura di affondo", "a misura camminando"));

    /** Blades that touch, to blades that do not. */
    static final Map<String, String> CONTACT = Map.ofEntries(
            Map.entry("blades engaged", "blades apart"),
            Map.entry("engaged", "blades apart"),
            Map.entry("fers engagés", "fers séparés"),
            Map.entry("ferri legati", "ferri separati"));

    /** Blades that do not touch. */
    static final Map<String, String> APART = Map.ofEntries(
            Map.entry("blades apart", "blades engaged"),
            Map.entry("fers séparés", "fers engagés"),
            Map.entry("ferri separati", "ferri legati"));

    private Words() {}

    /** The text with every word of the table changed at once; empty if it holds none. */
    static Optional<String> swapped(String text, Map<String, String> table) {
        String any = String.join(
                "|",
                table.keySet().stream()
                        .sorted((one, other) -> other.length() - one.length())
                        .map(Pattern::quote)
                        .toList());
        Matcher word =
                Pattern.compile("(?iu)(?<!\\p{L})(" + any + ")(?!\\p{L})").matcher(text);
        StringBuilder swapped = new StringBuilder();
        boolean found = false;
        while (word.find()) {
            found = true;
            String other = table.getOrDefault(word.group(1).toLowerCase(java.util.Locale.ROOT), "");
            word.appendReplacement(swapped, Matcher.quoteReplacement(other));
        }
        word.appendTail(swapped);
        return found ? Optional.of(swapped.toString()) : Optional.empty();
    }

    /** The text without the sentence, or the part of one, in which a word begins so; empty if there is none. */
    static Optional<String> without(String text, String beginning) {
        Pattern part = Pattern.compile("(?iu)[^.,;]*(?<!\\p{L})(" + beginning + ")[^.,;]*[.,;]?");
        String rest = part.matcher(text).replaceFirst("").strip();
        return rest.equals(text.strip()) ? Optional.empty() : Optional.of(rest);
    }
}
