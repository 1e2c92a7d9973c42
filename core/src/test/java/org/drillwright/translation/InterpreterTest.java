package org.drillwright.translation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.lexicon.Spelling;
import org.drillwright.mark.PrintMark;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.Side;
import org.drillwright.model.Translations;
import org.drillwright.model.Translations.Entry;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.Unsaved;
import org.drillwright.source.FieldPath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What of a drill is said in another language, and what stays. Facts of language are common practice, no source. */
class InterpreterTest {

    private static final Language FRENCH = new Language("fr");

    private static final String DRILL = """
            title: Parry and riposte
            level: intermediate
            form: partner
            weapon: foil
            works-on: [timing]
            gear: [mask, jacket, lucky socks]
            purpose: To answer at once.
            start: On guard in sixte, blades apart, at lunge distance.
            opening: Salute. Masks on. On guard in sixte.
            steps:
              - leader: Extend to the high inside line and lunge.
                follower: {say: "Stop it!", means: "Parry quarte."}
                distance: lunge
                safety: Arrive softly.
              - leader: Recover on guard in sixte.
                follower: Riposte straight, or disengage.
                distance: extension to lunge
              - leader: Bend both knees over the feet.
                follower: Return to guard in sixte.
                distance: lunge
            closing: Step back out of distance. Masks off. Salute.
            note: Slowly first.
            cautions: [Masks stay on.]
            """;

    @TempDir
    static Path root;

    private static SchoolFolder folder(String drill) {
        try {
            return SchoolFolder.of(root, new Unsaved(Map.of(root.resolve("parry.yaml"), drill)));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Rendering render(String drill, Language into, Entry... own) {
        SchoolFolder folder = folder(drill);
        Subject subject = folder.entries().get(0).subject().orElseThrow();
        return new Interpreter(folder.school(), into, new Translations(List.of(own))).render(subject);
    }

    private static Rendering french(Entry... own) {
        return render(DRILL, FRENCH, own);
    }

    private static String turn(Rendering one, int step, Side side) {
        return one.drill().drill().steps().get(step).turn(side).orElseThrow().say();
    }

    private static Entry entry(String from, String to) {
        return new Entry(from, to, false);
    }

    private static List<String> places(List<FieldPath> paths) {
        return paths.stream().map(FieldPath::text).toList();
    }

    @Test
    void what_was_read_is_said_anew() {
        Rendering one = french();
        assertEquals("Relevez-vous en garde en sixte.", turn(one, 1, Side.LEADER));
        assertEquals("Parez quarte.", turn(one, 0, Side.FOLLOWER));
        assertEquals("fente", one.drill().drill().steps().get(0).distance());
        assertEquals("d'allongement à fente", one.drill().drill().steps().get(1).distance());
        assertEquals(List.of("temps"), one.drill().drill().worksOn());
        assertEquals("intermédiaire", one.drill().drill().level());
        assertEquals(
                List.of("masque", "veste", "lucky socks"), one.drill().drill().gear());
        assertEquals(9, one.turns());
    }

    /** A choice was not read whole, and what nothing is played of cannot be said by its action. */
    @Test
    void what_was_not_read_whole_stays_and_is_marked() {
        Rendering one = french();
        assertEquals("Riposte straight, or disengage.", turn(one, 1, Side.FOLLOWER));
        assertEquals("Bend both knees over the feet.", turn(one, 2, Side.LEADER));
        assertEquals(List.of("steps/1/follower", "steps/2/leader"), places(one.staying()));
        assertEquals(Language.ENGLISH, one.apart().get(FieldPath.of("steps/1/follower")));
    }

    @Test
    void free_words_are_those_of_the_school_or_stay() {
        Rendering one =
                french(entry("To answer at once.", "Pour répondre aussitôt."), entry("lucky socks", "chaussettes"));
        assertEquals("Pour répondre aussitôt.", one.drill().drill().purpose());
        assertEquals("Parry and riposte", one.drill().drill().title());
        assertEquals(
                List.of("masque", "veste", "chaussettes"), one.drill().drill().gear());
        assertEquals(
                Set.of(
                        "Parry and riposte",
                        "Arrive softly.",
                        "Slowly first.",
                        "Masks stay on.",
                        "Bend both knees over the feet."),
                one.wanted().keySet());
        assertEquals("title of parry", String.valueOf(one.wanted().get("Parry and riposte")));
        assertTrue(one.used().contains("To answer at once."));
        assertTrue(one.apart().containsKey(FieldPath.of("title")));
        assertTrue(!one.apart().containsKey(FieldPath.of("purpose")));
    }

    @Test
    void a_turn_is_said_as_the_school_translated_it_if_that_is_read_as_the_same() {
        Rendering one = french(entry("Stop it!", "Parez en quarte !"));
        assertEquals("Parez en quarte !", turn(one, 0, Side.FOLLOWER));
        assertEquals(Map.of(), one.unlike());
    }

    @Test
    void a_translation_that_is_read_otherwise_is_not_used() {
        Rendering one = french(
                entry("Stop it!", "Parez sixte."),
                entry("Recover on guard in sixte.", "Gloublez le zinzin."),
                entry("Riposte straight, or disengage.", "Ripostez tout droit, ou dégagez."));
        assertEquals("Parez quarte.", turn(one, 0, Side.FOLLOWER));
        assertEquals("Riposte straight, or disengage.", turn(one, 1, Side.FOLLOWER));
        assertEquals(
                Map.of(
                        "Stop it!", "This is read as 'Parry sixte.'",
                        "Recover on guard in sixte.", "This could not be read whole",
                        "Riposte straight, or disengage.", "The turn itself was not read whole"),
                one.unlike().entrySet().stream()
                        .collect(Collectors.toMap(
                                Map.Entry::getKey, unlike -> unlike.getValue().english())));
    }

    @Test
    void a_drill_that_is_written_in_the_language_stays_as_it_is() {
        Rendering one = render(DRILL, Language.ENGLISH);
        assertEquals("Stop it!", turn(one, 0, Side.FOLLOWER));
        assertTrue(one.drill().drill().madeFrom().isEmpty());
        assertEquals(List.of(), one.staying());
        assertEquals(Map.of(), one.wanted());
        assertEquals(one.original().mark(), one.drill().mark());
    }

    /** A card that says that it was made from another language is another card. */
    @Test
    void the_mark_tells_what_a_card_was_made_from() {
        Drill drill = french().drill().drill();
        Drill written = new Drill(
                drill.id(),
                drill.title(),
                drill.level(),
                drill.form(),
                drill.weapon(),
                drill.hands(),
                drill.worksOn(),
                drill.needs(),
                drill.gear(),
                drill.purpose(),
                drill.start(),
                drill.opening(),
                drill.steps(),
                drill.closing(),
                drill.repeat(),
                drill.swap(),
                drill.tempo(),
                drill.note(),
                drill.cautions(),
                drill.variantOf(),
                drill.tags(),
                drill.revised(),
                drill.accept());
        assertNotEquals(
                PrintMark.of(drill, french().drill().school()),
                PrintMark.of(written, french().drill().school()));
    }

    /** How and when is said where it is listed; else it stands behind, and wants a translation. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    Return to guard in sixte, hand high.              | Mettez-vous en garde en sixte, la main haute.         |
                    Return to guard in sixte as your partner lunges.  | Mettez-vous en garde en sixte quand le partenaire se fend. |
                    Return to guard in sixte, thumb on top.           | Mettez-vous en garde en sixte. [thumb on top]         | thumb on top
                    Return to guard in sixte because he lunges.       | Mettez-vous en garde en sixte. [because he lunges]    | because he lunges
                    Retreat slowly, thumb on top.                     | Rompez. [slowly, thumb on top]                        | slowly, thumb on top
                    Retreat one step.                                 | Rompez.                                               |
                    Retreat slowly.                                   | Rompez lentement.                                     |
                    """)
    void how_and_when_is_not_lost(String turn, String said, String behind) {
        Rendering one = render(DRILL.replace("Return to guard in sixte.", turn), FRENCH);
        FieldPath place = FieldPath.of("steps/2/follower");
        assertEquals(said, turn(one, 2, Side.FOLLOWER));
        assertEquals(behind, one.beside().get(place));
        assertEquals(behind != null, one.wanted().containsKey(turn));
        assertFalse(one.apart().containsKey(place));
    }

    /** Once the school has translated it, nothing stands behind. */
    @Test
    void a_translation_of_how_is_printed() {
        String turn = "Return to guard in sixte, thumb on top.";
        Rendering one = render(
                DRILL.replace("Return to guard in sixte.", turn),
                FRENCH,
                entry(turn, "Mettez-vous en garde en sixte, la main haute."));
        assertEquals("Mettez-vous en garde en sixte, la main haute.", turn(one, 2, Side.FOLLOWER));
        assertEquals(Map.of(), one.unlike());
        assertFalse(one.beside().containsKey(FieldPath.of("steps/2/follower")));
    }

    /** What a drill is said to be in, in its file, is where it is looked first. */
    @Test
    void the_language_that_a_drill_states_is_its_own() {
        String drill = DRILL.replace("Riposte straight, or disengage.", "Contre-riposte.");
        assertEquals(Language.ENGLISH, render(drill, FRENCH).from());
        assertEquals(FRENCH, render(drill + "language: fr\n", Language.ENGLISH).from());
    }

    /** The usual words of gear are the same piece to the rules in every language: by {@code check/gear.words}. */
    @Test
    void gear_is_the_same_piece_in_all_languages() throws IOException {
        Map<String, Set<String>> pieces = pieces();
        int compared = 0;
        for (List<String> row : UsualWords.standard().rows()) {
            for (String piece : List.of("mask", "jacket", "underarm protector", "glove")) {
                Set<String> words = pieces.getOrDefault(piece, Set.of());
                if (holds(row.get(0), words)) {
                    for (String word : row) {
                        assertTrue(holds(word, words), () -> word + " is no " + piece);
                        compared++;
                    }
                }
            }
        }
        assertTrue(compared >= 4 * 5, "only " + compared);
    }

    private static boolean holds(String words, Set<String> piece) {
        String folded = " " + Spelling.fold(words).replace('-', ' ') + " ";
        return piece.stream().anyMatch(word -> folded.contains(" " + word + " "));
    }

    private static Map<String, Set<String>> pieces() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(Subject.class.getResourceAsStream("/org/drillwright/check/gear.words"))) {
            Map<String, Set<String>> pieces = new java.util.HashMap<>();
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && line.contains(":"))
                    .map(line -> line.split(":", 2))
                    .forEach(line -> pieces.put(line[0].strip(), words(line[1])));
            return pieces;
        }
    }

    private static Set<String> words(String list) {
        return new HashSet<>(Arrays.stream(list.split(",")).map(String::strip).toList());
    }

    /** A line with too few columns would leave a language without a word. */
    @Test
    void each_usual_word_is_there_in_each_language() {
        assertTrue(UsualWords.standard().rows().stream()
                .allMatch(row ->
                        row.size() == Language.all().size() && Stream.of("").noneMatch(row::contains)));
    }
}
