package org.drillwright.print.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.check.Subject;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Quarter;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Family;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class SvgWriterTest {

    /** What a card may be made of; nothing that runs, fetches or links. */
    private static final Set<String> HARMLESS = Set.of("svg", "g", "text", "use", "line", "path");

    private static final double THOUSANDTH = 0.0006;

    private static Drawn drawn(Frame frame) {
        return Drawn.read(new SvgWriter(Family.dejaVu(), Locale.ENGLISH).write(frame, "A card"));
    }

    /** Of every third drill, laid and written once for all tests. */
    private static final Map<CardSize, Map<Frame, Drawn>> CARDS = new EnumMap<>(CardSize.class);

    private static Map<Frame, Drawn> cards(CardSize size) {
        return CARDS.computeIfAbsent(size, wanted -> {
            Labels labels = Labels.in(Language.ENGLISH);
            List<Subject> drills = Example.drills();
            Map<Frame, Drawn> cards = new LinkedHashMap<>();
            for (int at = 0; at < drills.size(); at += 3) {
                CardLayout.lay(List.of(Example.card(drills.get(at))), wanted, labels, Family.dejaVu())
                        .fronts()
                        .forEach(card -> cards.put(card, drawn(card)));
            }
            return cards;
        });
    }

    @AfterAll
    static void letGo() {
        CARDS.clear();
    }

    private static List<Mark.Text> texts(Frame frame) {
        List<Mark.Text> texts = new ArrayList<>();
        frame.backdrop().forEach(mark -> texts(mark, texts));
        texts.addAll(Flat.texts(frame));
        Flat.figures(frame).forEach(figure -> figure.marks().forEach(mark -> texts(mark, texts)));
        return texts;
    }

    private static void texts(Mark mark, List<Mark.Text> into) {
        if (mark instanceof Mark.Text text) {
            into.add(text);
        } else if (mark instanceof Mark.Named named) {
            named.marks().forEach(part -> texts(part, into));
        }
    }

    private static Frame saying(String text) {
        Mark.Text run = new Mark.Text(10, 20, 8, Face.REGULAR, text, Ink.BLACK);
        return new Frame(100, 50, 0, List.of(), List.of(new Node.Words(Role.PARAGRAPH, List.of(run))));
    }

    @ParameterizedTest
    @EnumSource(
            value = CardSize.class,
            names = {"A6", "INDEX_3X5", "WALL_A4"})
    void every_text_of_a_card_stands_where_it_stands_on_paper(CardSize size) {
        Map<Frame, Drawn> cards = cards(size);
        assertTrue(cards.size() >= 10, "cards: " + cards.size());
        cards.forEach((card, drawn) -> {
            List<Drawn.Run> runs = new ArrayList<>(drawn.runs());
            List<Mark.Text> texts = texts(card);
            assertEquals(texts.size(), runs.size());
            for (Mark.Text text : texts) {
                String shown = text.text().replaceFirst("\u00AD$", "-");
                boolean there = runs.removeIf(run -> run.text().equals(shown)
                        && Math.abs(run.x() - text.x()) < THOUSANDTH
                        && Math.abs(run.y() - text.baseline()) < THOUSANDTH
                        && Math.abs(run.size() - text.size()) < THOUSANDTH);
                assertTrue(there, text.toString());
            }
        });
    }

    @Test
    void a_card_is_made_of_harmless_elements_and_keeps_its_size() {
        for (Drawn drawn : cards(CardSize.A6).values()) {
            Set<String> names =
                    drawn.elements("*").stream().map(Element::getLocalName).collect(Collectors.toSet());
            assertTrue(HARMLESS.containsAll(names), names.toString());
            Set<String> inside = drawn.elements("g").stream()
                    .map(group -> "#" + group.getAttribute("id"))
                    .collect(Collectors.toSet());
            assertTrue(drawn.elements("use").stream().allMatch(use -> inside.contains(use.getAttribute("href"))));
            Element root = drawn.document().getDocumentElement();
            // 105 by 148 mm, the size of A6 by ISO 216, in points of 1/72 inch.
            assertEquals("0 0 297.638 419.528", root.getAttribute("viewBox"));
            assertEquals("297.638pt", root.getAttribute("width"));
        }
    }

    @Test
    void parts_are_heard_as_what_they_are() {
        Frame card = List.copyOf(cards(CardSize.A6).keySet()).get(7);
        Drawn drawn = cards(CardSize.A6).get(card);
        List<String> roles = drawn.elements("g").stream()
                .map(group -> group.getAttribute("role"))
                .toList();
        assertTrue(roles.containsAll(List.of("heading", "paragraph", "table", "row", "columnheader", "rowheader")));
        List<String> said = drawn.elements("g").stream()
                .filter(group -> group.getAttribute("role").equals("img"))
                .map(group -> group.getAttribute("aria-label"))
                .toList();
        List<String> signs = said.stream().filter(words -> words.endsWith(":")).toList();
        assertTrue(signs.containsAll(List.of("Leader:", "Follower:", "Safety:")), signs::toString);
        List<String> pictures =
                said.stream().filter(words -> !words.endsWith(":")).toList();
        assertEquals(Flat.figures(card).stream().map(Node.Figure::alternative).toList(), pictures);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "' onload='alert(1)",
                "</text></svg><script>alert(1)</script>",
                "]]><![CDATA[<b>",
                "&lt;script&gt; &amp; &#60;",
                "<!-- --> <?xml version='1.0'?> <!DOCTYPE x>",
                "javascript:alert(1)"
            })
    void text_stays_text(String payload) {
        Drawn drawn = drawn(saying(payload));
        assertEquals(
                List.of(payload), drawn.runs().stream().map(Drawn.Run::text).toList());
        assertTrue(drawn.elements("*").stream().map(Element::getLocalName).allMatch(HARMLESS::contains));
        String label = new SvgWriter(Family.dejaVu(), Locale.ENGLISH).write(saying("x"), payload);
        assertEquals(payload, Drawn.read(label).document().getDocumentElement().getAttribute("aria-label"));
    }

    /** XML 1.0, production 2: what may not stand in a document has a stand-in. */
    @ParameterizedTest
    @CsvSource({"0000", "0008", "001B", "FFFE", "FFFF", "D800"})
    void what_xml_forbids_is_replaced(String hex) {
        String text = "a" + (char) Integer.parseInt(hex, 16) + "b";
        assertEquals("a\uFFFDb", drawn(saying(text)).runs().get(0).text());
    }

    @Test
    void a_run_keeps_its_length() {
        Element text = drawn(saying("Parry")).elements("text").get(0);
        double width = Family.dejaVu().of(Face.REGULAR).width("Parry") * 8;
        assertEquals(width, Double.parseDouble(text.getAttribute("textLength")), THOUSANDTH);
    }

    /** Where the four corners of a frame of 30 by 20 come to lie when it is placed at (100, 200): worked by hand. */
    @ParameterizedTest
    @CsvSource({
        "UP,    matrix(1 0 0 1 100 200)",
        "LEFT,  matrix(0 -1 1 0 100 230)",
        "DOWN,  matrix(-1 0 0 -1 130 220)",
        "RIGHT, matrix(0 1 -1 0 120 200)"
    })
    void a_frame_in_a_frame_is_turned(Quarter top, String matrix) {
        Frame inner = new Frame(30, 20, 0, List.of(), List.of());
        Frame outer = new Frame(400, 400, 0, List.of(), List.of(new Node.Placed(100, 200, top, inner)));
        assertTrue(drawn(outer).elements("g").stream()
                .anyMatch(group -> group.getAttribute("transform").equals(matrix)));
    }

    @Test
    void text_that_is_turned_is_turned_against_the_clock() {
        Mark.Text draft = new Mark.Text(10, 20, 8, Face.BOLD, "DRAFT", Ink.BLACK, 30);
        Element text = drawn(new Frame(100, 50, 0, List.of(draft), List.of()))
                .elements("text")
                .get(0);
        assertEquals("rotate(-30 10 20)", text.getAttribute("transform"));
        assertEquals("bold", text.getAttribute("font-weight"));
    }
}
