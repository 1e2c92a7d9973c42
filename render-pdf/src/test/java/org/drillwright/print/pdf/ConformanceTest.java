package org.drillwright.print.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.print.Drills;
import org.drillwright.print.Example;
import org.drillwright.print.MadeUp;
import org.drillwright.print.Printed;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Sheets;
import org.drillwright.print.command.Trial;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Quarter;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.impose.Duplex;
import org.drillwright.print.impose.Imposition;
import org.drillwright.print.impose.Laminate;
import org.drillwright.print.impose.Leaf;
import org.drillwright.print.impose.RegistrationSheet;
import org.drillwright.print.impose.SheetPlan;
import org.drillwright.print.impose.Shift;
import org.drillwright.print.impose.Stock;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.Laid;
import org.drillwright.print.layout.SafetyCard;
import org.drillwright.print.layout.block.SheetNote;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.Back;
import org.drillwright.print.layout.words.Labels;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Judged by an outside validator: veraPDF, for PDF/UA-1 and PDF/A-2a. */
class ConformanceTest {

    private static final List<String> FLAVOURS = List.of("ua1", "2a");

    @BeforeAll
    static void found() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private static List<String> failures(byte[] pdf) throws Exception {
        List<String> failures = new ArrayList<>();
        for (String name : FLAVOURS) {
            PDFAFlavour flavour = PDFAFlavour.byFlavourId(name);
            try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                    PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, true)) {
                validator.validate(parser).getFailedChecks().keySet().stream()
                        .map(rule -> name + " " + rule.getClause() + "-" + rule.getTestNumber())
                        .sorted()
                        .forEach(failures::add);
            }
        }
        return failures;
    }

    @Test
    void cards_conform() throws Exception {
        assertEquals(
                List.of(),
                failures(PdfWriterTest.pdf(PdfWriterTest.cards(CardSize.A6, Drills.second(), Drills.solo()))));
    }

    @Test
    void sheets_with_turned_cards_conform() throws Exception {
        assertEquals(List.of(), failures(PdfWriterTest.pdf(PdfWriterTest.sheets(SheetSize.LETTER))));
    }

    @Test
    void sheets_printed_on_both_sides_in_chapters_conform() throws Exception {
        List<Leaf> leaves = PdfWriterTest.cards(CardSize.A6, Drills.riposte(), Drills.solo()).stream()
                .map(card -> new Leaf(card, Optional.of(card)))
                .toList();
        SheetPlan plan =
                SheetPlan.on(Stock.of(SheetSize.A4)).with(Laminate.SHEET).with(Duplex.LONG_EDGE, new Shift(0.5, -0.5));
        Frame note = SheetNote.of(Labels.in(Language.ENGLISH), Family.dejaVu());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Contents contents = new Contents(List.of(new Chapter("Foil", 2)), true);
        new PdfWriter(Family.dejaVu()).write(Imposition.impose(leaves, plan, note), contents, PdfWriterTest.INFO, out);
        assertEquals(List.of(), failures(out.toByteArray()));
    }

    @Test
    void the_sheet_that_measures_a_printer_conforms() throws Exception {
        Labels labels = Labels.in(new Language("it"));
        List<Frame> pages = RegistrationSheet.pages(
                Stock.of(SheetSize.LETTER),
                Duplex.SHORT_EDGE,
                Shift.NONE,
                SheetNote.measuringFront(labels, Family.dejaVu()),
                SheetNote.measuringBack(labels, Family.dejaVu()));
        assertEquals(List.of(), failures(PdfWriterTest.pdf(pages)));
    }

    @Test
    void a_draft_in_another_language_conforms() throws Exception {
        List<Frame> cards = CardLayout.lay(
                        List.of(Drills.draft(Drills.riposte())),
                        CardSize.A5,
                        Labels.in(new Language("fr")),
                        Family.dejaVu())
                .fronts();
        assertEquals(List.of(), failures(PdfWriterTest.pdf(cards)));
    }

    @Test
    void pictures_backs_and_the_safety_card_conform() throws Exception {
        List<Frame> pages = new ArrayList<>();
        Laid laid = CardLayout.lay(
                List.of(
                        Example.card(Example.drill("circular-parry-of-sixte")),
                        Example.card(Example.drill("sabre-cut-to-head"))),
                Format.of(CardSize.A6),
                Back.PICTURES,
                Labels.in(new Language("it")),
                Family.dejaVu());
        pages.addAll(laid.sides());
        pages.add(SafetyCard.lay(Grid.of(CardSize.A6), "", Labels.in(new Language("it")), Family.dejaVu())
                .front());
        assertEquals(List.of(), failures(PdfWriterTest.pdf(pages)));
    }

    /** Sheets that are read from the right. */
    @Test
    void pages_from_the_right_conform() throws Exception {
        conform(List.of("term", "lesson", "cover"));
    }

    /** A whole book that opens to the right, so that its links lead somewhere. */
    @Test
    @Tag("deep")
    void a_book_from_the_right_conforms() throws Exception {
        conform(List.of("booklet"));
    }

    private static void conform(List<String> kinds) throws Exception {
        Map<String, List<Frame>> all = new Printed(Optional.of(MadeUp.FROM_THE_RIGHT), SheetSize.A4).all();
        for (String kind : kinds) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            new PdfWriter(Family.dejaVu())
                    .write(
                            all.get(kind),
                            new DocumentInfo(
                                    kind, MadeUp.FROM_THE_RIGHT.language().locale()),
                            out);
            assertEquals(List.of(), failures(out.toByteArray()), kind);
        }
    }

    /** Every sheet that planning prints, of the example's class. */
    @Test
    void sheets_of_a_class_conform(@TempDir Path folder) throws Exception {
        String school = Example.copyTo(folder.resolve("school")).toString();
        for (String command : List.of(
                "pairs tonight --sheet a3",
                "lesson tonight",
                "hall tonight",
                "progress --initials",
                "term winter --date 2026-12-03",
                "session Ash Dee")) {
            List<String> arguments = new ArrayList<>(List.of(command.split(" ")));
            arguments.addAll(List.of("--school", school, "--out", "sheet.pdf"));
            assertEquals(0, Sheets.print(folder, arguments.toArray(String[]::new)), command);
            assertEquals(List.of(), failures(Files.readAllBytes(folder.resolve("sheet.pdf"))), command);
        }
    }

    /** Devanagari in a font of its own, Lao, Hebrew with points. */
    @Test
    void words_of_shaped_letters_conform() throws Exception {
        Family faces = Family.dejaVu().with(ShapedPdfTest.devanagari());
        assertEquals(List.of(), failures(ShapedPdfTest.pdf("दीप्ति, श्रेया, ນ້ອຍ, שָׂרָה", faces)));
    }

    @Test
    void a_picture_conforms() throws Exception {
        Node figure = new Node.Figure(
                "The two stand at lunge distance.",
                new Rectangle(10, 10, 80, 80),
                List.of(Mark.Shape.stroked(Outline.circle(40, 40, 30), 1, Ink.BLACK)));
        Frame picture = new Frame(100, 100, 0, List.of(), List.of(figure));
        Frame sheet = new Frame(200, 200, 0, List.of(), List.of(new Node.Placed(20, 30, Quarter.LEFT, picture)));
        assertEquals(List.of(), failures(PdfWriterTest.pdf(List.of(sheet))));
    }

    @Test
    void a_packet_for_an_assistant_conforms(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("handout.pdf");
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "handout", "thrusts", "--out", file.toString());
        assertEquals(0, trial.code(), trial.out() + trial.err());
        assertEquals(List.of(), failures(Files.readAllBytes(file)));
    }

    @Test
    void a_booklet_conforms(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("booklet.pdf");
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "booklet", "--out", file.toString());
        assertEquals(0, trial.code(), trial.out() + trial.err());
        assertEquals(List.of(), failures(Files.readAllBytes(file)));
    }

    /** The validator does see faults: the same card without its tree of meaning. */
    @Test
    void a_card_without_tags_fails_both() throws Exception {
        List<String> failures =
                failures(withoutTags(PdfWriterTest.pdf(PdfWriterTest.cards(CardSize.A6, Drills.solo()))));
        for (String flavour : FLAVOURS) {
            assertFalse(failures.stream().noneMatch(failure -> failure.startsWith(flavour)), flavour + " saw nothing");
        }
    }

    private static byte[] withoutTags(byte[] pdf) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            document.getDocumentCatalog().getCOSObject().removeItem(COSName.STRUCT_TREE_ROOT);
            document.save(out);
        }
        return out.toByteArray();
    }
}
