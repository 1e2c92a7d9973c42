package org.drillwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.CompactNumberFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.drillwright.mark.PlanMark;
import org.drillwright.model.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rules and examples are CLDR's, in {@code wording/plurals.tsv}; the same rules are asked of the JDK, which reads them itself. */
class PluralRuleTest {

    /** Languages of like rules, and their rules by the form, as CLDR writes them. */
    record Rules(List<String> languages, Map<String, String> rules) {

        /** The form of any number, by rules that are read once. */
        LongFunction<String> form() {
            Map<String, PluralRule> read = new LinkedHashMap<>();
            rules.forEach((form, rule) -> {
                if (!bare(rule).isEmpty()) {
                    read.put(form, PluralRule.of(rule));
                }
            });
            return number -> read.entrySet().stream()
                    .filter(rule -> rule.getValue().holds(number))
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElse(Plurals.OTHER);
        }

        @Override
        public String toString() {
            return languages.get(0);
        }
    }

    static List<Rules> all() throws IOException {
        List<Rules> all = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("src/test/resources/wording/plurals.tsv"))) {
            String[] fields = line.split("\t", -1);
            if (fields.length == 3) {
                all.get(all.size() - 1).rules().put(fields[1], fields[2]);
            } else if (!line.startsWith("#")) {
                all.add(new Rules(List.of(line.split(" ")), new LinkedHashMap<>()));
            }
        }
        return all;
    }

    private static String bare(String rule) {
        return rule.replaceFirst("@.*", "").strip();
    }

    /** Whole numbers among the examples; those written with a power, such as {@code 1c6}, are for short forms. */
    private static LongStream examples(String rule) {
        return Stream.of(rule.replaceFirst(".*@integer", "").split(","))
                .map(String::strip)
                .filter(example -> example.matches("\\d+(~\\d+)?"))
                .flatMapToLong(example -> {
                    String[] ends = example.split("~");
                    return LongStream.rangeClosed(Long.parseLong(ends[0]), Long.parseLong(ends[ends.length - 1]));
                });
    }

    @ParameterizedTest
    @MethodSource("all")
    void every_example_of_cldr_takes_its_form(Rules rules) {
        LongFunction<String> ruled = rules.form();
        rules.rules()
                .forEach((form, rule) -> examples(rule)
                        .forEach(number ->
                                assertEquals(form, ruled.apply(number), () -> rules.languages() + " " + number)));
    }

    /** {@link CompactNumberFormat} is handed rules as Unicode writes them. */
    @ParameterizedTest
    @MethodSource("all")
    void each_number_takes_the_form_that_the_jdk_gives_it(Rules rules) {
        String ruled = rules.rules().entrySet().stream()
                .filter(rule -> !bare(rule.getValue()).isEmpty())
                .map(rule -> rule.getKey() + ":" + bare(rule.getValue()))
                .collect(Collectors.joining(";"));
        String pattern = Stream.of("zero", "one", "two", "few", "many", "other")
                .map(form -> form + ":0'" + form + "'")
                .collect(Collectors.joining(" ", "{", "}"));
        CompactNumberFormat jdk = new CompactNumberFormat(
                "0", DecimalFormatSymbols.getInstance(Locale.ROOT), new String[] {pattern}, ruled);
        LongFunction<String> form = rules.form();
        for (long number = 0; number <= 1000; number++) {
            assertEquals(
                    jdk.format(number),
                    number + form.apply(number),
                    rules.languages().toString());
        }
    }

    /** Its own words bring a language's rules; beyond this bound nothing is counted. */
    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void the_languages_of_the_program_count_as_cldr_says(Language language) throws IOException {
        Rules rules = all().stream()
                .filter(one -> one.languages().contains(language.word()))
                .findFirst()
                .orElseThrow();
        LongFunction<String> form = rules.form();
        Plurals plurals = Plurals.in(language.locale());
        for (long number = 0; number < 1_000_000; number += number < 20_000 ? 1 : 997) {
            assertEquals(form.apply(number), plurals.form(number));
            assertTrue(plurals.forms().contains(plurals.form(number)));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "n",
                "n =",
                "n = 1..",
                "n = 1 and",
                "x = 1",
                "n % 0 = 1",
                "n = 1 or",
                "n is 1",
                "n = 1 2",
                "n < 1"
            })
    void what_is_no_rule_is_refused(String rule) {
        assertThrows(IllegalArgumentException.class, () -> PluralRule.of(rule));
    }

    /** Czech words and rules lie with the tests: 2 to 4 take a form of their own (CLDR), the words are from memory. */
    @Test
    void a_language_says_as_many_forms_as_it_has() {
        Locale czech = Locale.forLanguageTag("cs");
        assertEquals(List.of("one", "few", "other"), Plurals.in(czech).forms());
        assertEquals(
                List.of("0 párů", "1 pár", "2 páry", "4 páry", "5 párů", "22 párů"),
                Stream.of(0, 1, 2, 4, 5, 22)
                        .map(number -> Message.counted(PluralRuleTest.class, "pairs", number)
                                .in(czech))
                        .toList());
    }

    /** A room that has no words in it yet is heard in English, and counts as English does. */
    @Test
    void words_that_are_english_count_in_english() {
        Message drills = Message.counted(PlanMark.class, "nowhere", 3);
        IllegalStateException missing =
                assertThrows(IllegalStateException.class, () -> drills.in(Locale.forLanguageTag("cs")));
        assertEquals("no nowhere.other in words_en.properties", missing.getMessage());
    }
}
