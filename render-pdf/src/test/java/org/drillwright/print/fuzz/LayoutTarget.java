package org.drillwright.print.fuzz;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.print.Drills;
import org.drillwright.print.Example;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.Laid;
import org.drillwright.print.layout.WholeCards;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Contents;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PdfWriter;

/** A drill of any texts on a card of any size: four bytes choose the card, the rest is the texts, one a line. */
public final class LayoutTarget {

    /** As long as reading lets a text of a turn be. */
    private static final int LONGEST = 400;

    /** More counts than fit on two cards of most sizes. */
    private static final int STEPS = 24;

    private static final int CHOICES = 4;

    private static final PdfWriter WRITER = new PdfWriter(Family.dejaVu());

    private LayoutTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        byte[] choices = Arrays.copyOf(bytes, CHOICES);
        List<CardSize> sizes = List.of(CardSize.values());
        List<Language> languages = Language.all();
        CardSize size = sizes.get((choices[0] & 0xFF) % sizes.size());
        Language language = languages.get((choices[1] & 0xFF) % languages.size());
        Back back = List.of(Back.values()).get((choices[2] & 0xFF) % Back.values().length);
        CardSubject subject = subject(drill(texts(bytes)), choices[3]);
        Laid laid = CardLayout.lay(List.of(subject), Format.of(size), back, Labels.in(language), Family.dejaVu());
        WholeCards.of(subject, laid, size);
        assertEquals(
                laid, CardLayout.lay(List.of(subject), Format.of(size), back, Labels.in(language), Family.dejaVu()));
        if (!laid.cards().isEmpty()) {
            assertWritten(laid);
        }
    }

    /** The same bytes twice, with a page for each side. */
    private static void assertWritten(Laid laid) {
        DocumentInfo info = new DocumentInfo("A drill", Locale.ENGLISH);
        byte[] pdf = WRITER.bytes(laid.sides(), Contents.PLAIN, info);
        assertArrayEquals(pdf, WRITER.bytes(laid.sides(), Contents.PLAIN, info));
        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertEquals(laid.sides().size(), read.getNumberOfPages());
        } catch (IOException broken) {
            throw new AssertionError("not to be read back", broken);
        }
    }

    private static CardSubject subject(Drill drill, byte kind) {
        CardSubject plain = (kind & 1) == 0 ? Drills.subject(drill) : Drills.draft(drill);
        boolean pictures = (kind & 2) != 0;
        return new CardSubject(
                plain.drill(),
                plain.school(),
                (kind & 4) == 0 ? plain.place() : Optional.empty(),
                plain.draft(),
                plain.footerRemarks(),
                pictures
                        ? Optional.of(Example.drill("double-against-the-circle").replay())
                        : Optional.empty());
    }

    /** Texts as a reader hands them on: in normal form, trimmed, no longer than it lets them be. */
    private static List<String> texts(byte[] bytes) {
        int from = Math.min(CHOICES, bytes.length);
        String all = new String(bytes, from, bytes.length - from, StandardCharsets.UTF_8);
        List<String> texts = new ArrayList<>();
        for (String line : all.split("\n", -1)) {
            String text = Normalizer.normalize(line, Normalizer.Form.NFC).strip();
            texts.add(text.substring(
                    0, text.offsetByCodePoints(0, Math.min(LONGEST, text.codePointCount(0, text.length())))));
        }
        return texts;
    }

    /** Title, opening, closing and a caution, then five texts a count. */
    private static Drill drill(List<String> texts) {
        List<Step> steps = new ArrayList<>();
        int at = 4;
        do {
            steps.add(new Step(
                    OptionalInt.empty(),
                    text(texts, at),
                    turn(texts, at + 1),
                    turn(texts, at + 2),
                    text(texts, at + 3),
                    text(texts, at + 4),
                    ""));
            at += 5;
        } while (at < texts.size() && steps.size() < STEPS);
        return with(text(texts, 0), text(texts, 1), text(texts, 2), text(texts, 3), steps);
    }

    private static String text(List<String> texts, int at) {
        return at < texts.size() ? texts.get(at) : "";
    }

    private static Optional<Turn> turn(List<String> texts, int at) {
        return Optional.of(text(texts, at)).filter(words -> !words.isEmpty()).map(Turn::of);
    }

    private static Drill with(String title, String opening, String closing, String caution, List<Step> steps) {
        Drill like = Drills.riposte();
        return new Drill(
                "a-drill",
                title,
                like.level(),
                like.form(),
                like.weapon(),
                like.hands(),
                like.worksOn(),
                like.needs(),
                like.gear(),
                "",
                like.start(),
                opening,
                steps,
                closing,
                like.repeat(),
                like.swap(),
                like.tempo(),
                caution,
                caution.isEmpty() ? List.of() : List.of(caution),
                like.variantOf(),
                like.tags(),
                like.revised(),
                like.accept());
    }
}
