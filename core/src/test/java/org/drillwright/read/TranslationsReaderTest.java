package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Translations.Entry;
import org.drillwright.source.Finding;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

class TranslationsReaderTest {

    private static final String FILE = """
            # ours
            texts:
              # title of lunge
              - from: Lunge  # a good one
                to: Fente
              - from: "Softly: let the blade bend."
                to:
              - to: 'À la cible'
                from: At the
                  mark
                unused: false
            """;

    private static Reading<ReadTranslations> read(String text) {
        return TranslationsReader.read("translations/fr.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    private static ReadTranslations whole(String text) {
        return read(text)
                .value()
                .orElseThrow(() -> new AssertionError(read(text).findings()));
    }

    private static Map<String, Message> wanted(String... texts) {
        Map<String, Message> wanted = new LinkedHashMap<>();
        for (String text : texts) {
            wanted.put(text, Message.plain("note of somewhere"));
        }
        return wanted;
    }

    @Test
    void reads_what_is_translated_and_what_is_to_come() {
        assertEquals(
                List.of(
                        new Entry("Lunge", "Fente", false),
                        new Entry("Softly: let the blade bend.", "", false),
                        new Entry("At the mark", "À la cible", false)),
                whole(FILE).translations().entries());
        assertEquals(Optional.of("À la cible"), whole(FILE).translations().of(" At the\n   mark "));
        assertEquals(Optional.empty(), whole(FILE).translations().of("Softly: let the blade bend."));
    }

    @Test
    void says_where_a_file_is_wrong() {
        assertEquals(List.of("unknown-key"), rules("texts:\n  - from: a\n    to: b\n    too: c\n"));
        assertEquals(List.of("key-missing"), rules("texts:\n  - to: b\n"));
        assertEquals(List.of("wrong-kind"), rules("texts: {a: b}\n"));
        assertEquals(
                List.of("text-empty-or-too-long"), rules("texts:\n  - from: a\n    to: " + "b".repeat(2001) + "\n"));
    }

    /** Which of two would be printed could not be known; twice the same does no harm. */
    @Test
    void one_text_has_one_translation() {
        String twice = "texts:\n  - from: a\n    to: b\n  - from: a\n    to: ";
        assertEquals(List.of("key-twice"), rules(twice + "c\n"));
        assertEquals(List.of(), rules(twice + "b\n"));
        assertEquals(List.of(), rules(twice + "\n"));
    }

    private static List<String> rules(String text) {
        return read(text).findings().stream().map(Finding::rule).toList();
    }

    @Test
    void a_new_file_is_read_as_what_is_asked_for() {
        String text = TranslationsText.of(
                wanted("Plain words.", "With \"quotes\" and a \\", "- a dash: and a colon # no remark"),
                Locale.ENGLISH);
        assertEquals(
                List.of("Plain words.", "With \"quotes\" and a \\", "- a dash: and a colon # no remark"),
                whole(text).translations().entries().stream().map(Entry::from).toList());
        assertTrue(text.contains("# note of somewhere"), text);
    }

    @Test
    void what_stands_there_stays_letter_for_letter() {
        String more = TranslationsText.with(
                        whole(FILE),
                        wanted("Lunge", "Parry"),
                        Set.of("Lunge", "Softly: let the blade bend.", "At the mark", "Parry"),
                        Locale.ENGLISH)
                .orElseThrow();
        assertEquals(FILE + "  # note of somewhere\n  - from: Parry\n    to:\n", more);
    }

    @Test
    void what_no_drill_has_is_marked_and_comes_back() {
        String marked = TranslationsText.with(whole(FILE), Map.of(), Set.of("At the mark"), Locale.ENGLISH)
                .orElseThrow();
        assertEquals(
                List.of(true, true, false),
                whole(marked).translations().entries().stream()
                        .map(Entry::unused)
                        .toList());
        assertTrue(marked.contains("to: Fente\n    unused: true\n"), marked);
        assertTrue(marked.contains("# a good one"), marked);
        String again = TranslationsText.with(
                        whole(marked),
                        Map.of(),
                        Set.of("Lunge", "Softly: let the blade bend.", "At the mark"),
                        Locale.ENGLISH)
                .orElseThrow();
        assertTrue(whole(again).translations().entries().stream().noneMatch(Entry::unused), again);
        assertEquals(Optional.of("Fente"), whole(again).translations().of("Lunge"));
    }

    /** A file that was laid out in braces holds no lines that one could be put behind. */
    @Test
    void what_cannot_be_added_to_is_left_alone() {
        assertEquals(
                Optional.empty(),
                TranslationsText.with(
                        whole("texts: [{from: a, to: b}]\n"), wanted("c"), Set.of("a", "c"), Locale.ENGLISH));
    }

    @Test
    void a_file_without_an_end_of_its_last_line_is_added_to() {
        String more = TranslationsText.with(
                        whole("texts:\n- from: a\n  to: b"), wanted("c"), Set.of("a", "c"), Locale.ENGLISH)
                .orElseThrow();
        assertEquals("texts:\n- from: a\n  to: b\n# note of somewhere\n- from: c\n  to:\n", more);
    }
}
