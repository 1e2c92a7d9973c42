package org.drillwright.print.sheet.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.Walk;
import org.drillwright.print.Example;
import org.drillwright.print.command.PlanFiles;
import org.drillwright.print.command.Sheets;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Node;
import org.drillwright.print.wording.Written;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheets of a school that doesn't speak English. */
class InItsLanguageTest {

    private static final Pattern LETTERS = Pattern.compile("\\p{L}{2,}");

    /** Of the drills in the folder. */
    private static final String TITLES = "Straight thrust with the lunge; Parry of quarte, straight riposte";

    private static Set<String> words(String text) {
        return LETTERS.matcher(text.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toSet());
    }

    private static Set<String> bundle(Language language) {
        return Written.texts(WallTexts.class, "words", language)
                .flatMap(text -> words(text).stream())
                .collect(Collectors.toSet());
    }

    /** Those that the language doesn't have too, and that are nobody's name and in no title. */
    private static void hasNoEnglish(String read, Language language, String names) {
        Set<String> found = words(read);
        found.retainAll(bundle(Language.ENGLISH));
        found.removeAll(bundle(language));
        found.removeAll(words(names));
        assertEquals(Set.of(), found, read);
    }

    private static String alternatives(Node node) {
        return node instanceof Node.Group group
                ? group.parts().stream().map(InItsLanguageTest::alternatives).collect(Collectors.joining(" "))
                : node instanceof Node.Figure figure ? figure.alternative() : "";
    }

    private static PairingPlan watched() {
        List<Group> groups = new ArrayList<>();
        for (int place = 1; place <= 4; place++) {
            groups.add(new Group(
                    Group.Kind.WATCHED,
                    place,
                    List.of("P" + place, "Q" + place),
                    Optional.empty(),
                    Optional.of(place < 3 ? "instructor" : "Ilse"),
                    Optional.empty()));
        }
        groups.add(new Group(Group.Kind.HELPED, 5, List.of("Rx"), Optional.of("instructor")));
        return PairingPlan.printed(List.of(new Round(1, "drill", groups)), 0, List.of());
    }

    /** A post at which nobody stands, and nobody who joins a pair. */
    private static PairingPlan resting() {
        List<Round> rounds = new ArrayList<>();
        List<String> stays = List.of("Sa", "Sb", Walk.REST);
        List<String> moves = List.of("Wa", "Wb", "Wc");
        for (int round = 1; round <= 3; round++) {
            List<Group> groups = new ArrayList<>();
            for (int post = 0; post < 3; post++) {
                String walker = moves.get(Math.floorMod(post - round + 1, 3));
                boolean alone = stays.get(post).equals(Walk.REST);
                groups.add(
                        alone
                                ? new Group(Group.Kind.SOLO, 0, List.of(walker), Optional.empty())
                                : new Group(
                                        Group.Kind.PAIR, post + 1, List.of(stays.get(post), walker), Optional.empty()));
            }
            rounds.add(new Round(round, "drill", groups));
        }
        return PairingPlan.printed(rounds, 0, List.of(new Walk(1, 3, stays, moves)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"fr", "it", "es", "de"})
    void no_english_word_is_read_back(String tag) {
        Language language = new Language(tag);
        List<PairingPlan> plans = List.of(
                Evenings.random(9, 6, 2, new Random(5)),
                Evenings.random(60, 30, 0, new Random(6)),
                Evenings.walked(5, 6, 3),
                Evenings.walkedTwice(8),
                watched(),
                resting());
        for (PairingPlan plan : plans) {
            EveningSheet sheet = Evenings.sheet(plan, SheetSize.A4, language);
            List<Frame> pages = new ArrayList<>(sheet.pages());
            pages.addAll(sheet.slips());
            for (Frame page : pages) {
                ReadBack.isClean(page);
                String figures = page.content().stream()
                        .map(InItsLanguageTest::alternatives)
                        .collect(Collectors.joining(" "));
                String read = ReadBack.text(page) + "\n" + figures;
                hasNoEnglish(read, language, "Parry of quarte, drill " + plan.rounds());
            }
        }
    }

    /** 24 people, 14 rounds, two ways to stand: in English that fills one sheet, and other languages have longer words. */
    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void slips_take_one_sheet(Language language, @TempDir Path folder) throws IOException {
        Path root = Example.copyTo(folder.resolve("school"));
        Files.writeString(
                root.resolve("school.yaml"),
                Files.readString(root.resolve("school.yaml")).replaceAll("(?m)^language:.*", "") + "\nlanguage: "
                        + language.word() + "\n");
        assertEquals(
                0,
                Sheets.print(folder, "pairs", "tonight", "--slips", "--school", root.toString(), "--out", "slips.pdf"));
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(folder.resolve("slips.pdf")))) {
            assertEquals(1, pdf.getNumberOfPages());
        }
    }

    /** Half of the class is new to the riposte, and too few know it: two who are new work together, watched. */
    @ParameterizedTest
    @ValueSource(strings = {"fr", "de"})
    void a_school_prints_in_its_language(String tag, @TempDir Path root) throws IOException {
        Language language = new Language(tag);
        PlanFiles.of(root, 9, 2)
                .with(
                        "classes/tonight.yaml",
                        "date: 2026-08-26\nminutes: 120\ndrills: [straight, riposte]\nsettings: {straight: {rounds: 2}}\n");
        Path settings = root.resolve("school.yaml");
        String school = Files.exists(settings) ? Files.readString(settings) : "";
        Files.writeString(settings, "language: " + tag + "\n" + school);
        Set<String> read = new HashSet<>();
        for (List<String> form : List.of(List.<String>of(), List.of("--slips"), List.of("--by", "round"))) {
            List<String> arguments = new ArrayList<>(List.of("pairs", "tonight", "--out", "sheet.pdf"));
            arguments.addAll(form);
            assertTrue(Sheets.print(root, arguments.toArray(String[]::new)) < 2);
            try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(root.resolve("sheet.pdf")))) {
                String text = new PDFTextStripper().getText(pdf);
                hasNoEnglish(text, language, TITLES + " New " + school);
                read.add(text);
            }
        }
        assertEquals(3, read.size());
        String day = tag.equals("de") ? "Mittwoch, 26. August 2026" : "Mercredi 26 août 2026";
        assertTrue(read.stream().filter(text -> text.contains(day)).count() >= 2, read.toString());
        assertFalse(read.toString().contains("instructor"), read.toString());
    }
}
