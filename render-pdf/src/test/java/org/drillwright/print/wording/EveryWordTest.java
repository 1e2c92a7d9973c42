package org.drillwright.print.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.wording.Plurals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the program says is there in every language: the words of all rooms, in both modules, and nothing that nobody says. */
class EveryWordTest {

    private static final List<Path> MODULES = List.of(Path.of("../core/src/main"), Path.of("src/main"));

    private static final Pattern ENGLISH = Pattern.compile("(words|labels|help)_en\\.properties");

    private static final Pattern FORM = Pattern.compile("\\.(zero|one|two|few|many|other)$");

    /** The rooms of what is printed. */
    private static final Pattern PAPER = Pattern.compile(
            "package org\\.drillwright\\.print\\.(layout|sheet|page|booklet|handout|impose|phone|diagram)\\b");

    private static final Pattern GAP = Pattern.compile("\\{(\\d)(?::[a-z]+)?\\}");

    private static final Pattern SAID =
            Pattern.compile("Message\\s*\\.(of|counted)\\(\\s*(\\w+)\\.class,\\s*\"([^\"]+)\"\\s*([,)])");

    /** A room asks for words by their keys; one that only joins or capitalises what it has doesn't. */
    private static final Pattern ASKED = Pattern.compile("Message\\s*\\.(of|counted)\\(");

    private static final Path PAGE = Path.of("src/main/resources/org/drillwright/print/command/watch/page");

    /** What a script of the page says by a key; and where the page itself has one. */
    private static final Pattern BY_SCRIPT = Pattern.compile("\\b(said|counted|joined)\\('([^']+)'[,)]");

    private static final Pattern BY_PAGE = Pattern.compile("\\{([a-z.]+)(\\|[^}]*)?\\}");

    /** Such as {@code l'attaque}: books set an apostrophe there (Imprimerie nationale 2002, from memory). */
    private static final Pattern STRAIGHT = Pattern.compile("(?i)[a-zà-ÿ]'[a-zà-ÿ]");

    /** Before these a French sentence has a space at which no line may break (CLDR, French; Imprimerie nationale 2002, from memory). */
    private static final Pattern BREAKABLE = Pattern.compile(" [:;!?»]|« ");

    static Stream<Path> english() throws IOException {
        List<Path> all = new ArrayList<>();
        for (Path module : MODULES) {
            try (Stream<Path> files = Files.walk(module.resolve("resources"))) {
                files.filter(file -> ENGLISH.matcher(name(file)).matches()).forEach(all::add);
            }
        }
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("english")
    void each_room_says_the_same_in_every_language(Path english) throws IOException {
        Properties words = read(english);
        for (Language language : Language.all()) {
            Path file = english.resolveSibling(name(english).replace("_en.", "_" + language.word() + "."));
            assertTrue(Files.exists(file), () -> file + " is missing");
            Properties there = read(file);
            assertEquals(asked(plain(words, english), language), plain(there, english), file::toString);
            for (String key : plain(there, english)) {
                String said = words.getProperty(
                        key, words.getProperty(FORM.matcher(key).replaceFirst(".other")));
                assertEquals(gaps(said), gaps(there.getProperty(key)), file + ": " + key);
                assertFalse(there.getProperty(key).isBlank() && !said.isBlank(), file + ": " + key);
            }
        }
    }

    /** The keys that a language has to have for those of English: of what is counted, each form that the language has. */
    private static Set<String> asked(Set<String> english, Language language) {
        Set<String> keys = new TreeSet<>();
        for (String key : english) {
            String bare = FORM.matcher(key).replaceFirst("");
            if (!bare.equals(key) && english.containsAll(Set.of(bare + ".one", bare + ".other"))) {
                Plurals.in(language.locale()).forms().forEach(form -> keys.add(bare + "." + form));
            } else {
                keys.add(key);
            }
        }
        return keys;
    }

    /** Polish has four forms (CLDR), and no language of the program more than two. */
    @Test
    void a_language_is_asked_for_all_its_forms() {
        Set<String> english = new TreeSet<>(Set.of("pairs", "pairs.one", "pairs.other", "keep.one"));
        assertEquals(english, asked(english, Language.ENGLISH));
        assertEquals(
                new TreeSet<>(Set.of("pairs.one", "pairs.few", "pairs.many", "pairs.other", "pairs", "keep.one")),
                asked(english, new Language("pl")));
    }

    @ParameterizedTest
    @MethodSource("english")
    void words_are_set_as_the_language_sets_them(Path english) throws IOException {
        for (String language : List.of("fr", "it")) {
            there(english, language)
                    .forEach((key, text) -> assertFalse(
                            STRAIGHT.matcher(text.toString()).find(),
                            () -> english + " " + language + ": " + key + "=" + text));
        }
        there(english, "fr")
                .forEach((key, text) -> assertFalse(
                        BREAKABLE.matcher(text.toString()).find(), () -> english + " fr: " + key + "=" + text));
    }

    /** A colon that a class puts between two words of people is set as in English in every language. */
    @Test
    void no_class_sets_a_colon_on_paper() throws IOException {
        List<String> glued = new ArrayList<>();
        for (Path source : sources()) {
            String text = Files.readString(source);
            boolean onPaper = PAPER.matcher(text).find();
            if (onPaper && text.contains(" + \": \" + ")) {
                glued.add(name(source));
            }
        }
        assertEquals(List.of(), glued);
    }

    /** What a class says has to be in the file of its room. */
    @Test
    void whatever_is_said_has_words() throws IOException {
        List<String> missing = new ArrayList<>();
        for (Path source : sources()) {
            String text = Files.readString(source);
            Matcher said = SAID.matcher(text);
            while (said.find()) {
                Optional<Properties> words = wordsOf(text, said.group(2));
                String key = said.group(3) + (said.group(1).equals("counted") ? ".other" : "");
                if (words.isEmpty() || words.get().getProperty(key) == null) {
                    missing.add(source.getFileName() + ": " + key);
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void whatever_the_page_says_has_words() throws IOException {
        Properties words = read(PAGE.resolve("words_en.properties"));
        Set<String> asked = new TreeSet<>();
        for (Path file : files(PAGE, ".js")) {
            Matcher said = BY_SCRIPT.matcher(Files.readString(file));
            while (said.find()) {
                asked.add(said.group(2) + (said.group(1).equals("counted") ? ".other" : ""));
            }
        }
        String page = Files.readString(PAGE.resolve("page.html"));
        Matcher said = BY_PAGE.matcher(page);
        while (said.find()) {
            asked.add(said.group(1));
        }
        asked.removeAll(Set.of("lang", "dir"));
        assertTrue(asked.size() > 60, asked::toString);
        asked.removeAll(words.stringPropertyNames());
        assertEquals(Set.of(), asked);
        assertEquals(
                "Drillwright Drillwright",
                page.replaceAll("<[^>]*>", " ")
                        .replaceAll("\\{[^}]*\\}", " ")
                        .strip()
                        .replaceAll("\\s+", " "));
        assertFalse(page.matches("(?s).*(aria-label|placeholder|title|alt)=\"[^{\"].*"));
    }

    /** A key that no class of the room writes, whole or by its beginning, is left over. */
    @ParameterizedTest
    @MethodSource("english")
    void no_words_are_left_over(Path english) throws IOException {
        StringBuilder room = new StringBuilder();
        Path folder = Path.of(english.getParent().toString().replace("resources", "java"));
        for (Path file : files(folder, ".java")) {
            room.append(Files.readString(file));
        }
        for (Path file : files(english.resolveSibling(""), ".js")) {
            room.append(Files.readString(file).replace('\'', '"'));
        }
        for (String ending : List.of(".html", ".yaml")) {
            for (Path file : files(english.resolveSibling(""), ending)) {
                room.append(BY_PAGE.matcher(Files.readString(file)).replaceAll("\"$1\""));
            }
        }
        assumeTrue(name(english).startsWith("words"), "the help and the labels have tests of their own");
        assumeTrue(ASKED.matcher(room).find(), "its keys are made otherwise; the room's own test knows them");
        List<String> left = plain(read(english), english).stream()
                .filter(key -> !isWritten(key, room))
                .toList();
        assertEquals(List.of(), left, english::toString);
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> name(file).endsWith(ending)).toList();
        }
    }

    private static boolean isWritten(String key, CharSequence room) {
        String text = room.toString();
        String bare = FORM.matcher(key).replaceFirst("");
        return text.contains("\"" + key + "\"")
                || text.contains("\"" + bare + "\"")
                || Stream.iterate(key.lastIndexOf('.'), at -> at > 0, at -> key.lastIndexOf('.', at - 1))
                        .anyMatch(at -> text.contains("\"" + key.substring(0, at + 1) + "\"")
                                || text.contains("\"" + key.substring(0, at) + "\"")
                                || text.contains("\"" + key.substring(at) + "\""))
                || text.contains("\"" + key.replaceFirst("\\..*", "") + "\"");
    }

    private static Optional<Properties> wordsOf(String text, String type) throws IOException {
        Matcher imported = Pattern.compile("import ([\\w.]+)\\." + type + ";").matcher(text);
        Matcher own = Pattern.compile("package ([\\w.]+);").matcher(text);
        String room = imported.find() ? imported.group(1) : own.find() ? own.group(1) : "";
        for (Path module : MODULES) {
            Path file =
                    module.resolve("resources").resolve(room.replace('.', '/')).resolve("words_en.properties");
            if (Files.exists(file)) {
                return Optional.of(read(file));
            }
        }
        return Optional.empty();
    }

    private static List<Path> sources() throws IOException {
        List<Path> all = new ArrayList<>();
        for (Path module : MODULES) {
            try (Stream<Path> files = Files.walk(module.resolve("java"))) {
                files.filter(file -> name(file).endsWith(".java")).forEach(all::add);
            }
        }
        return all;
    }

    /** The keys without those of a term's forms, which each language has as it needs them. */
    private static Set<String> plain(Properties words, Path english) {
        Set<String> keys = new TreeSet<>(words.stringPropertyNames());
        if (english.getParent().endsWith("terms")) {
            keys.removeIf(key -> key.matches(".*\\.(the|a|acc|of|to|at|in|into|de)"));
        }
        // When a number takes which form, and which words change before which sounds, is each language's own.
        keys.removeIf(key ->
                key.matches("(plural|before)\\..*") && english.getParent().endsWith("wording"));
        // At the foot of a card made from another language stands which one: never its own.
        keys.removeIf(key -> key.startsWith("made.from."));
        return keys;
    }

    private static Set<String> gaps(String text) {
        Set<String> gaps = new TreeSet<>();
        Matcher gap = GAP.matcher(text);
        while (gap.find()) {
            gaps.add(gap.group(1));
        }
        return gaps;
    }

    private static Properties there(Path english, String language) throws IOException {
        return read(english.resolveSibling(name(english).replace("_en.", "_" + language + ".")));
    }

    private static Properties read(Path file) throws IOException {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        return words;
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
