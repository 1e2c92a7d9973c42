package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.lexicon.LexicalEntry;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.LexiconFile;
import org.drillwright.wording.PackedFile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The packed list says what the text says, which is read here beside it. */
class WordListTest {

    private static final List<String> PARTS =
            List.of("spelling", "lines", "actions", "things", "people", "small", "manner", "short");

    static List<String> tags() {
        return LanguageTables.lines("tongues");
    }

    private static Lexicon text(String tag) {
        return LexiconFile.read(PARTS.stream()
                .flatMap(part -> LanguageTables.lines(tag + "/" + part + ".lexicon").stream())
                .toList());
    }

    private static Lexicon packed(String tag) {
        WordList list = WordList.of(tag);
        return list.unpacked(list.packed()).orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("tags")
    void every_form_of_the_text_has_its_senses_in_the_packed_list(String tag) {
        Lexicon text = text(tag);
        Lexicon packed = packed(tag);
        Map<LexicalEntry, Map<String, String>> forms = text.forms();
        assertEquals(forms, packed.forms());
        assertEquals(text.single(), packed.single());
        assertTrue(forms.size() > 500, () -> tag + ": " + forms.size());
        int found = 0;
        for (Map.Entry<LexicalEntry, Map<String, String>> entry : forms.entrySet()) {
            for (String words : entry.getValue().values()) {
                assertEquals(text.words(words), packed.words(words));
                assertEquals(text.entries(words), packed.entries(words), words);
                found += packed.entries(words).stream()
                                .anyMatch(sense ->
                                        sense.lemma().equals(entry.getKey().lemma()))
                        ? 1
                        : 0;
            }
        }
        assertTrue(found > forms.size(), tag + ": " + found);
    }

    @ParameterizedTest
    @MethodSource("tags")
    void words_are_parted_and_written_in_full_alike(String tag) {
        Lexicon text = text(tag);
        Lexicon packed = packed(tag);
        assertEquals(text.clitics(), packed.clitics());
        for (String word : text.single()) {
            String cut = word.substring(0, Math.max(1, word.length() - 2));
            assertEquals(
                    text.inFull(text.words(cut), text::lists), packed.inFull(packed.words(cut), packed::lists), word);
            assertEquals(text.words(word + cut), packed.words(word + cut), word);
        }
    }

    @ParameterizedTest
    @MethodSource("tags")
    void a_list_of_another_text_does_not_count(String tag) {
        WordList list = WordList.of(tag);
        byte[] other = list.packed();
        ByteBuffer.wrap(other).putLong(ByteBuffer.wrap(other).getLong() ^ 1);
        assertEquals(Optional.empty(), list.unpacked(other));
    }

    /** Only a build has packed one; without it there is nothing that could be old. */
    @ParameterizedTest
    @MethodSource("tags")
    void what_the_build_has_packed_is_made_of_these_texts(String tag) {
        Optional<byte[]> built = PackedFile.ifThere(WordList.class, tag + "/" + WordList.PACKED);
        assumeTrue(built.isPresent());
        assertArrayEquals(WordList.of(tag).packed(), built.orElseThrow());
    }
}
