package org.drillwright.print;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.print.layout.words.CardSubject;

/**
 * Languages that nobody speaks, made from the English words so that layouts can be tried before anybody translates
 * (pseudo-localisation, common practice). Their words are written as files among those of the tests and found as any
 * language's are: nothing in the program knows of them. Their tags are among those that ISO 639-2 leaves to private use.
 */
public enum MadeUp {
    /** Vowels doubled and with accents, an ending to longer words, every second pair of words written as one. */
    LONG("qal"),
    /** In Hebrew letters without vowels, read from the right. */
    FROM_THE_RIGHT("qar");

    private static final List<Path> MODULES = List.of(Path.of("../core/src/main"), Path.of("src/main"));

    private static final Pattern ENGLISH = Pattern.compile("(words|labels|help)_en\\.properties");

    /** What is filled in, and stays. */
    private static final Pattern GAP = Pattern.compile("\\{\\d(?::[a-z]+)?\\}");

    private static final Pattern WORD = Pattern.compile("\\p{L}+");

    /** Two words in which a language of compounds would have one. */
    private static final Pattern PAIR = Pattern.compile("(\\p{L}{4,}) (\\p{L}{4,})(?! \\p{L}{4,} )");

    /** Of these keys the words are no words: how numbers are counted, what changes before a sound, and a day's pattern. */
    private static final Pattern PATTERNS = Pattern.compile("plural\\..*|before\\..*|(week)?day(\\.first)?");

    private static final String PLAIN = "aeiouyAEIOUY";
    private static final List<String> DOUBLED =
            List.of("áä", "éê", "îí", "öó", "üû", "ÿý", "Áä", "Éê", "Îí", "Öó", "Üû", "Ýÿ");

    /** From so many letters on a word gets an ending. */
    private static final int MANY = 4;

    private static final String ENDING = "en";

    private static final String HEBREW = "אבגדהוזחטיכלמנסעפצקרשתםןףץ";

    static {
        for (MadeUp language : values()) {
            language.writeInto(folder());
        }
    }

    private final String tag;

    MadeUp(String tag) {
        this.tag = tag;
    }

    public Language language() {
        return new Language(tag);
    }

    /** English words in this language; what is to be filled in stays. */
    public String said(String english) {
        StringBuilder said = new StringBuilder();
        int from = 0;
        for (MatchResult gap : GAP.matcher(english).results().toList()) {
            said.append(made(english.substring(from, gap.start()))).append(gap.group());
            from = gap.end();
        }
        return said.append(made(english.substring(from))).toString();
    }

    private String made(String words) {
        return switch (this) {
            case LONG -> longer(words);
            case FROM_THE_RIGHT -> turned(words);
        };
    }

    /** A school whose language it is. */
    public School said(School school) {
        return new School(
                said(school.name()),
                school.levels(),
                school.sets(),
                Map.of(),
                school.words(),
                school.parries(),
                school.fundamentals(),
                school.card(),
                school.sheet(),
                language(),
                school.font(),
                school.classLength(),
                school.count());
    }

    /** A drill as its author would have told it in this language. */
    public Drill said(Drill drill) {
        return new Drill(
                drill.id(),
                said(drill.title()),
                drill.level(),
                drill.form(),
                drill.weapon(),
                drill.hands(),
                drill.worksOn().stream().map(this::said).toList(),
                drill.needs(),
                drill.gear().stream().map(this::said).toList(),
                said(drill.purpose()),
                said(drill.start()),
                said(drill.opening()),
                drill.steps().stream().map(this::said).toList(),
                said(drill.closing()),
                drill.repeat(),
                drill.swap(),
                drill.tempo(),
                said(drill.note()),
                drill.cautions().stream().map(this::said).toList(),
                drill.variantOf(),
                drill.tags(),
                drill.revised(),
                drill.accept());
    }

    private Step said(Step step) {
        return new Step(
                step.number(),
                said(step.call()),
                step.leader().map(this::said),
                step.follower().map(this::said),
                said(step.distance()),
                said(step.safety()),
                said(step.note()));
    }

    private Turn said(Turn turn) {
        return Turn.of(said(turn.say()));
    }

    /** A drill's card with the pictures of the English drill. */
    public CardSubject card(Subject drill) {
        return new CardSubject(
                said(drill.drill()),
                said(drill.school()),
                Optional.of(new CardSubject.Place(said("intermediate foil"), 3, 12)),
                false,
                List.of(),
                Optional.of(drill.replay()));
    }

    private static String longer(String words) {
        String joined = PAIR.matcher(words)
                .replaceAll(pair -> pair.group(1) + pair.group(2).toLowerCase(Locale.ROOT));
        return WORD.matcher(joined).replaceAll(word -> lengthened(word.group()));
    }

    private static String lengthened(String word) {
        StringBuilder longer = new StringBuilder();
        for (int at = 0; at < word.length(); at++) {
            int vowel = PLAIN.indexOf(word.charAt(at));
            longer.append(vowel < 0 ? word.substring(at, at + 1) : DOUBLED.get(vowel));
        }
        return word.length() < MANY ? longer.toString() : longer.append(ENDING).toString();
    }

    private static String turned(String words) {
        return WORD.matcher(words).replaceAll(word -> hebrew(word.group().toLowerCase(Locale.ROOT)));
    }

    private static String hebrew(String word) {
        StringBuilder turned = new StringBuilder();
        for (int at = 0; at < word.length(); at++) {
            int letter = word.charAt(at) - 'a';
            if (at == 0 || "aeiou".indexOf(word.charAt(at)) < 0) {
                turned.append(letter >= 0 && letter < HEBREW.length() ? HEBREW.charAt(letter) : 'א');
            }
        }
        return turned.toString();
    }

    /** Writes its words into a folder that is to stand on a class path. */
    public void writeInto(Path folder) {
        for (Path module : MODULES) {
            Path resources = module.resolve("resources");
            try (Stream<Path> files = Files.walk(resources)) {
                for (Path file : files.filter(file -> ENGLISH.matcher(String.valueOf(file.getFileName()))
                                .matches())
                        .toList()) {
                    write(file, folder.resolve(resources.relativize(file)));
                }
            } catch (IOException problem) {
                throw new UncheckedIOException(problem);
            }
        }
    }

    /** Put in its place whole, for another process may be reading it. */
    private void write(Path english, Path beside) throws IOException {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(english, StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        Properties said = new Properties();
        words.forEach((key, text) ->
                said.put(key, PATTERNS.matcher(key.toString()).matches() ? text.toString() : said(text.toString())));
        said.replace("direction", this == FROM_THE_RIGHT ? "rtl" : "ltr");
        Path file = Path.of(beside.toString().replace("_en.", "_" + tag + "."));
        Files.createDirectories(Objects.requireNonNull(file.getParent()));
        Path part = Files.createTempFile(file.getParent(), "made", ".part");
        try (Writer writer = Files.newBufferedWriter(part, StandardCharsets.UTF_8)) {
            said.store(writer, "Made from the English words");
        }
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Where the classes of the tests are. */
    private static Path folder() {
        try {
            return Path.of(MadeUp.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
