package org.drillwright.print.phone;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.Drills;
import org.drillwright.print.Example;
import org.drillwright.print.command.Trial;
import org.drillwright.print.pdf.Family;
import org.drillwright.register.History;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** An evening's page as a file: what it tells each person, and what its parts of a line say to {@code record}. */
class EveningPageTest {

    @TempDir
    Path folder;

    private static List<String> all(String page, String pattern) {
        return Pattern.compile(pattern, Pattern.DOTALL)
                .matcher(page)
                .results()
                .map(one -> one.group(one.groupCount()))
                .toList();
    }

    private static String plain(String markup) {
        return markup.replaceAll("<[^>]*>", "")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }

    private static String hash(String text) throws Exception {
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
    }

    /** The example school's evening: 24 people, 14 rounds, two formings. */
    @Test
    void the_example_is_one_file_that_asks_nothing_of_any_other_place() throws Exception {
        Path school = Example.copyTo(folder.resolve("school"));
        Trial trial = Trial.run(school, "pairs", "tonight", "--html", "--out", "evening.html");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(
                trial.out()
                        .matches(
                                "(?s)evening.html: the evening of 24 people, one page of \\d+ kB\\. Send it to the phones"
                                        + " and open it there; it needs no network\\.\n.*Kept as \\S+\\.\n"),
                trial.out());
        byte[] bytes = Files.readAllBytes(school.resolve("evening.html"));
        assertTrue(bytes.length < 1_000_000, bytes.length + " bytes");
        String page = new String(bytes, StandardCharsets.UTF_8);
        String policy = all(page, "http-equiv=\"Content-Security-Policy\" content=\"([^\"]*)\"")
                .get(0)
                .replace("&#39;", "'");
        assertTrue(policy.startsWith("default-src 'none'; "), policy);
        assertTrue(
                policy.contains(
                        "script-src " + hash(all(page, "<script>(.*?)</script>").get(0)) + ";"),
                policy);
        assertTrue(
                policy.contains(
                        "style-src " + hash(all(page, "<style>(.*?)</style>").get(0)) + ";"),
                policy);
        assertFalse(policy.contains("unsafe"), policy);
        all(page, "\\b(?:href|src|action)=\"([^\"]*)\"")
                .forEach(address -> assertTrue(address.startsWith("#"), address));
        assertFalse(page.contains("http://") || page.contains("https://") || page.contains("@import"));
        assertEquals(List.of(), all(page, "<[^>]*\\s(on\\w+|style)="));
        List<String> ids = all(page, "\\sid=\"([^\"]*)\"");
        assertEquals(ids.size(), new HashSet<>(ids).size());
        Trial again = Trial.run(school, "pairs", "tonight", "--html", "--out", "evening.html");
        assertTrue(again.out().contains("is still the one on the wall"), again.out());
        assertArrayEquals(bytes, Files.readAllBytes(school.resolve("evening.html")));
    }

    /**
     * Walked and free, odd numbers in threes or alone or with a helper, all new under watching eyes: in each round each
     * reads their own partners and place, as the kept plan has them.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12 | movement: walk                          | assistants: [Marlow]",
                "12 | movement: free                          | assistants: [Marlow]",
                "11 | left-over: threes                       | assistants: []",
                "11 | left-over: solo                         | assistants: []",
                "9  | movement: free                          | assistants: [Marlow, Tess]",
                "8  | both-new: wanted                        | assistants: [Marlow]",
                "7  | solo: [P0]                              | assistants: []"
            })
    void everybody_reads_their_own_rounds(int count, String more, String assistants) throws IOException {
        List<String> names = IntStream.range(0, count).mapToObj(at -> "P" + at).toList();
        EveningSchool school = EveningSchool.of(folder, names, assistants + "\n", more + "\n");
        String page = Files.readString(school.page());
        KeptPlan plan = school.kept().plan();
        Map<String, String> articles = new HashMap<>();
        for (String article : all(page, "(<article id=\"person-.*?</article>)")) {
            articles.put(plain(all(article, "<h2[^>]*>(.*?)</h2>").get(0)), article);
        }
        for (String person : plan.names()) {
            String called = person.equals(History.INSTRUCTOR) ? "the instructor" : person;
            List<String> read = articles.containsKey(called)
                    ? all(articles.get(called), "<li>(.*?)</li>").stream()
                            .map(EveningPageTest::plain)
                            .map(said -> said.replaceAll("[\u2068\u2069]", ""))
                            .toList()
                    : List.of();
            assertEquals(read.isEmpty() ? 0 : plan.rounds().size(), read.size(), person);
            for (int at = 0; at < read.size(); at++) {
                Round round = plan.rounds().get(at);
                String said = read.get(at);
                assertTrue(said.startsWith("Round " + round.number()), said);
                List<Group> theirs = round.groups().stream()
                        .filter(group -> group.everyone().contains(person))
                        .toList();
                boolean watches = round.groups().stream()
                        .anyMatch(group -> group.eyes().filter(person::equals).isPresent());
                assertEquals(watches, said.contains("You watch"), said);
                assertEquals(theirs.isEmpty() && !watches, said.contains("Not in this round"), said);
                theirs.forEach(group -> told(person, group, said));
            }
        }
        assertTrue(articles.keySet().containsAll(names), articles.keySet().toString());
    }

    private static void told(String person, Group group, String said) {
        List<String> others = new ArrayList<>(group.everyone());
        others.remove(person);
        String with = others.stream()
                .map(name -> name.equals(History.INSTRUCTOR) ? "the instructor" : name)
                .collect(Collectors.joining(" + "));
        assertTrue(said.contains(with.isEmpty() ? "Alone" : with + (group.place() > 0 ? " p" : "")), said);
        if (group.place() > 0) {
            assertTrue(
                    said.matches("(?s).*(post|place) " + group.place() + "\\D.*|.*(post|place) " + group.place()),
                    said);
        }
        boolean leads = group.people().size() > 1 && group.people().get(0).equals(person);
        assertEquals(
                leads, said.contains("You lead first.") || said.contains("you in the middle: you lead each"), said);
        assertEquals(group.eyes().isPresent() && group.people().contains(person), said.contains("New to all"), said);
    }

    /**
     * By hand, as the guide tells it: who stands in the middle of a three leads each of the others, then is led; if all know
     * the drill each leads the next; of those two the third counts first. What eyes are on is new to all of the group.
     */
    @Test
    void each_is_told_their_part() {
        Optional<String> nobody = Optional.empty();
        Optional<String> tess = Optional.of("Tess");
        Round round = new Round(
                1,
                "riposte",
                List.of(
                        new Group(Group.Kind.THREE, 1, List.of("Kim", "Lee", "Mo"), nobody, nobody, Optional.of("Kim")),
                        new Group(Group.Kind.THREE, 2, List.of("Ada", "Bea", "Cal"), nobody),
                        new Group(Group.Kind.WATCHED, 3, List.of("Dot", "Eve"), nobody, tess, nobody),
                        new Group(Group.Kind.WATCHED, 4, List.of("Fin", "Gil"), nobody, tess, nobody),
                        new Group(Group.Kind.HELPED, 5, List.of("Hal"), Optional.of("instructor")),
                        new Group(Group.Kind.SOLO, 0, List.of("Ian"), nobody)));
        KeptPlan plan = new KeptPlan(
                "tonight",
                LocalDate.of(2026, 8, 26),
                Optional.empty(),
                0,
                Map.of(),
                List.of("Kim", "Lee", "Mo", "Ada", "Bea", "Cal", "Dot", "Eve", "Fin", "Gil", "Hal", "Ian"),
                List.of("instructor", "Tess"),
                List.of(round),
                List.of());
        Family faces = Family.dejaVu();
        String page = new String(
                new EveningPage(
                                Drills.SCHOOL,
                                new Kept(plan.mark(4), plan, Map.of()),
                                Naming.full(),
                                id -> new EveningDrill(id, "en"),
                                faces::file)
                        .write(),
                StandardCharsets.UTF_8);
        Map<String, String> told = new HashMap<>();
        all(page, "(<article id=\"person-.*?</article>)")
                .forEach(article -> told.put(
                        plain(all(article, "<h2[^>]*>(.*?)</h2>").get(0)),
                        all(article, "<li>.*?<div>(.*?)</div></li>").stream()
                                .map(said -> plain(said.replace("</p>", " "))
                                        .replaceAll("[\u2068\u2069]", "")
                                        .strip())
                                .collect(Collectors.joining(" "))));
        assertEquals(
                "Lee + Mo place 1 Three, you in the middle: you lead each of the others, then each of them leads you."
                        + " Mo counts first.",
                told.get("Kim"));
        assertEquals("Kim + Lee place 1 Three, Kim in the middle. Kim leads first. You count first.", told.get("Mo"));
        assertEquals("Kim + Mo place 1 Three, Kim in the middle. Kim leads first. Mo counts first.", told.get("Lee"));
        assertEquals(
                "Bea + Cal place 2 Three: each leads the next. You lead first. Cal counts first.", told.get("Ada"));
        assertEquals("Dot place 3 Dot leads first. New to all of you. Tess watches.", told.get("Eve"));
        assertEquals("the instructor place 5", told.get("Hal"));
        assertEquals("Hal place 5", told.get("the instructor"));
        assertEquals("Alone", told.get("Ian"));
        assertEquals("You watch place 3–4", told.get("Tess"));
        assertEquals(14, told.size());
    }

    /** The parts of a line, as the page has them, filled with names that are hard for a shell; record takes each. */
    @ParameterizedTest
    @EnumSource(RecordWords.class)
    @EnabledIf("org.drillwright.print.phone.Shell#isThere")
    void what_the_page_says_to_record_is_taken_whatever_the_name(RecordWords part) throws IOException {
        EveningSchool school = EveningSchool.of(folder, EveningSchool.HARD);
        String page = Files.readString(school.page());
        String body = all(page, "<body ([^>]*)>").get(0);
        String beginning = plain(all(body, "data-line=\"([^\"]*)\"").get(0));
        String form = plain(all(body, part.attribute() + "=\"([^\"]*)\"").get(0));
        Map<String, String> words = new HashMap<>();
        Matcher options = Pattern.compile("<option value=\"\\d+\" data-word=\"([^\"]*)\">([^<]*)</option>")
                .matcher(page);
        while (options.find()) {
            words.put(plain(options.group(2)), plain(options.group(1)));
        }
        assertTrue(words.keySet().containsAll(EveningSchool.HARD), words.toString());
        assertEquals("instructor", words.get("the instructor"));
        for (String person : EveningSchool.HARD) {
            String other = EveningSchool.HARD.get((EveningSchool.HARD.indexOf(person) + 1) % EveningSchool.HARD.size());
            String said =
                    form.replace("{0}", "1").replace("{1}", words.get(person)).replace("{2}", words.get(other));
            Trial trial = school.run(Shell.arguments(beginning + " " + said + " --dry-run"));
            assertEquals(0, trial.code(), said + ": " + trial.err());
            long there = trial.out()
                    .lines()
                    .filter(line -> line.endsWith(",,attended,"))
                    .count();
            boolean gone = part == RecordWords.GONE || part == RecordWords.INSTEAD;
            assertEquals(EveningSchool.HARD.size() - (gone ? 1 : 0), there, said + ":\n" + trial.out());
            boolean cell = trial.out().contains("\n2026-08-26," + cell(person) + ",,attended,");
            assertEquals(!gone, cell, said + ":\n" + trial.out());
        }
        assertTrue(Files.notExists(folder.resolve("x")));
    }

    /** RFC 4180, semicolons quoted, too, as some read them for commas; and a quotation mark before what a spreadsheet would run. */
    private static String cell(String name) {
        String safe = name.matches("[=+@-].*") ? "'" + name : name;
        return safe.matches(".*[\",;].*") ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    @Test
    void with_initials_the_page_holds_no_name() throws IOException {
        EveningSchool school = EveningSchool.of(folder, List.of("Ann Oak", "Ben Elm", "Cleo Ash", "Dan Fir"));
        String page = Files.readString(school.page("--initials"));
        for (String name : List.of("Ann", "Oak", "Ben", "Elm", "Cleo", "Ash", "Dan", "Fir", "Marlow")) {
            assertFalse(page.matches("(?s).*\\b" + name + "\\b.*"), name);
        }
        assertTrue(page.contains("<bdi>AO</bdi>"));
    }

    /** Rounds that were taken over as worked are told to whoever teaches, and to nobody else. */
    @Test
    void from_a_round_on_only_those_to_come_are_everybodys() throws IOException {
        EveningSchool school = EveningSchool.of(folder, List.of("Ash", "Bo", "Cy", "Dee", "Eli", "Fay"));
        assertEquals(0, school.run("pairs", "tonight", "--keep").code());
        String page = Files.readString(school.page("--from-round", "3", "--without", "Ash"));
        assertTrue(page.contains("data-taken-over=\"2\""));
        assertTrue(page.contains("id=\"round-1\""));
        assertEquals(
                0,
                all(page, "(<article id=\"person-\\d+\"[^>]*>.{0,400}<span class=\"heard\">Round </span>[12]<)")
                        .size());
        assertFalse(
                all(page, "<article id=\"person-[^>]*>(.*?)</h2>").toString().contains("Ash"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--html                             | --html needs a page to write into: --out FILE.",
                "--html --out x.pdf                 | With --html the file's name ends in .html, so that a phone knows what it is; 'x.pdf' does not.",
                "--out x.html                       | 'x.html' is the name of a page: say --html, too, or write a .pdf.",
                "--html --slips --out x.html        | --slips is for paper; leave it out, or leave out --html.",
                "--html --sheet a3 --out x.html     | --sheet is for paper; leave it out, or leave out --html.",
                "--html --by round --out x.html     | --by is for paper; leave it out, or leave out --html."
            })
    void what_does_not_go_together_is_one_line(String arguments, String said) {
        EveningSchool school = EveningSchool.of(folder, List.of("Ash", "Bo"));
        Trial trial = school.run(("pairs tonight " + arguments).split(" "));
        assertEquals(2, trial.code());
        assertEquals(said + "\n", trial.err());
        assertTrue(Files.notExists(folder.resolve("x.html")) && Files.notExists(folder.resolve("classes/plans")));
    }

    @Test
    void a_page_that_is_not_ours_is_left_alone() throws IOException {
        EveningSchool school = EveningSchool.of(folder, List.of("Ash", "Bo")).with("mine.html", "<html>mine</html>");
        Trial trial = school.run("pairs", "tonight", "--html", "--out", "mine.html");
        assertEquals(2, trial.code());
        assertEquals("<html>mine</html>", Files.readString(folder.resolve("mine.html")));
    }
}
