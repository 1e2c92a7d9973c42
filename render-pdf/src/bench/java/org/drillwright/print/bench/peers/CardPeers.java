package org.drillwright.print.bench.peers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drillwright.print.bench.peers.card.Fo;
import org.drillwright.print.bench.peers.card.FontFiles;
import org.drillwright.print.bench.peers.card.Html;
import org.drillwright.print.bench.peers.card.Part;
import org.drillwright.print.bench.peers.card.Tex;
import org.drillwright.print.bench.peers.work.FoCards;
import org.drillwright.print.bench.peers.work.HtmlCards;
import org.drillwright.print.bench.peers.work.OurCards;

/** Cards by the program beside the same cards by four general ways to make a PDF. */
final class CardPeers {

    private static final String OURS = "Drillwright";
    private static final String OPENHTML = "openhtmltopdf";
    private static final String FOP = "Apache FOP";
    private static final String CHROMIUM = "Chromium";
    private static final String PDFTEX = "pdfTeX (untagged)";

    private final Bench bench;
    private final Page page;
    private final FontFiles fonts;
    private final Optional<Tool> chromium;
    private final Optional<Tool> pdflatex;
    private final Optional<Tool> pdftotext;

    private CardPeers(Bench bench, Page page) throws IOException, InterruptedException {
        this.bench = bench;
        this.page = page;
        this.fonts = FontFiles.unpackedInto(Files.createDirectories(bench.file("fonts")));
        this.chromium = page.tool("chromium");
        this.pdflatex = page.tool("pdflatex");
        this.pdftotext = page.tool("pdftotext");
    }

    static void compare(Bench bench, Page page, CopiedSchool one, CopiedSchool example, CopiedSchool large)
            throws IOException, InterruptedException {
        page.line("");
        page.line("### Printing");
        page.line("");
        CardPeers peers = new CardPeers(bench, page);
        peers.versions();
        peers.compare(one, "one card");
        peers.compare(example, "the example school");
        peers.compare(large, "the large school");
    }

    private void versions() throws IOException, InterruptedException {
        page.line("openhtmltopdf " + bench.jars().version("openhtmltopdf-pdfbox") + ", Apache FOP "
                + bench.jars().version("fop-core") + ", Drillwright with PDFBox "
                + bench.jars().version("pdfbox") + ".");
        for (Optional<Tool> tool : List.of(chromium, pdflatex)) {
            if (tool.isPresent()) {
                page.line(tool.get().version() + ".");
            }
        }
    }

    private void compare(CopiedSchool school, String what) throws IOException, InterruptedException {
        Path folder = Files.createDirectories(bench.file("cards " + what));
        List<Part> cards = OurCards.lay(OurCards.drills(school.folder(), false)).stream()
                .map(Part::of)
                .toList();
        Files.writeString(folder.resolve("cards.html"), Html.of(cards));
        Files.writeString(folder.resolve("fonts.html"), Html.of(cards, fonts));
        Files.writeString(folder.resolve("cards.fo"), Fo.of(cards));
        Files.writeString(folder.resolve("cards.tex"), Tex.of(cards));
        List<Cold> jvm = jvm(school, folder);
        int passes = cards.size() > 100 ? 1 : cards.size() > 1 ? 2 : 30;
        int rounds = cards.size() > 100 ? bench.fewRounds() : bench.rounds();
        Map<String, Path> files = new LinkedHashMap<>();
        files.put(OURS, folder.resolve("ours.pdf"));
        files.put(OPENHTML, folder.resolve("openhtml.pdf"));
        files.put(FOP, folder.resolve("fop.pdf"));
        chromium.ifPresent(tool -> files.put(CHROMIUM, folder.resolve("chromium.pdf")));
        pdflatex.ifPresent(tool -> files.put(PDFTEX, folder.resolve("cards.pdf")));
        page.table(
                cards.size() == 1 ? "one card" : cards.size() + " cards",
                "ms a card",
                "theirs to ours, by the clock",
                "by the processor");
        warm(jvm, passes, rounds, cards.size());
        cold(jvm, folder, rounds, cards.size());
        pictures(school, folder, rounds, cards.size());
        prove(files);
    }

    private List<Cold> jvm(CopiedSchool school, Path folder) {
        String openhtml =
                bench.jars().of("openhtmltopdf-", "pdfbox-", "fontbox-", "xmpbox-", "graphics2d-", "commons-logging-");
        String fop = bench.jars()
                .of(
                        "fop-",
                        "batik-",
                        "xmlgraphics-commons-",
                        "commons-io-",
                        "commons-logging-",
                        "fontbox-",
                        "pdfbox-io-",
                        "xml-apis-");
        Path folderOfFonts = fonts.regular().resolveSibling(".").normalize();
        return List.of(
                new Cold(
                        OURS,
                        folder,
                        Bench.java(bench.jars().ours(), OurCards.class, school.folder(), "ours.pdf", "plain")),
                new Cold(
                        OPENHTML,
                        folder,
                        Bench.java(openhtml, HtmlCards.class, "cards.html", folderOfFonts, "openhtml.pdf")),
                new Cold(FOP, folder, Bench.java(fop, FoCards.class, "cards.fo", folderOfFonts, "fop.pdf")));
    }

    private void warm(List<Cold> jvm, int passes, int rounds, int cards) throws IOException, InterruptedException {
        List<Contender> warm = new ArrayList<>();
        try {
            for (Cold one : jvm) {
                warm.add(Warm.start(
                        one.name() + ", warm", one.folder(), one.command(), passes, cards > 100 ? 1 : passes * 10));
            }
            rows(Turns.of(warm, rounds), cards, true);
        } finally {
            warm.forEach(Contender::close);
        }
    }

    private void cold(List<Cold> jvm, Path folder, int rounds, int cards) throws IOException, InterruptedException {
        List<Contender> cold = new ArrayList<>();
        for (Cold one : jvm) {
            List<String> once = new ArrayList<>(one.command());
            once.add("once");
            cold.add(new Cold(one.name() + ", command", folder, once));
        }
        chromium.ifPresent(tool -> cold.add(new Cold(CHROMIUM + ", command", folder, chromium(tool, folder))));
        pdflatex.ifPresent(tool -> cold.add(new Cold(
                PDFTEX + ", command",
                folder,
                List.of(tool.path().toString(), "-interaction=batchmode", "-halt-on-error", "cards.tex"))));
        rows(Turns.of(cold, rounds), cards, true);
    }

    private static List<String> chromium(Tool tool, Path folder) {
        return List.of(
                "/bin/sh",
                "-c",
                "rm -rf user; exec \"$0\" --headless --no-sandbox --disable-gpu --disable-quic --no-first-run"
                        + " --disable-background-networking --disable-component-update --disable-sync"
                        + " --user-data-dir=user --no-pdf-header-footer --export-tagged-pdf"
                        + " --print-to-pdf=chromium.pdf \"$1\"",
                tool.path().toString(),
                folder.resolve("fonts.html").toUri().toString());
    }

    /** What the program does for its user: with pictures of every count, by its own command. */
    private void pictures(CopiedSchool school, Path folder, int rounds, int cards)
            throws IOException, InterruptedException {
        List<String> program = bench.program(
                "cards", "--school", school.folder(), "--card", "a6", "--sheet", "card", "--out", "pictures.pdf");
        rows(Turns.of(List.of(new Cold("Drillwright, `cards`, with pictures", folder, program)), rounds), cards, false);
    }

    private void rows(Turns turns, int cards, boolean ratios) {
        for (String name : turns.names()) {
            page.row(
                    name,
                    turns.clock(name).each(cards),
                    ratios ? turns.clockRatio(name).times() : "",
                    ratios ? turns.processorRatio(name).times() : "");
        }
    }

    /** That all files say the same, and the tagged ones have the same tables. */
    private void prove(Map<String, Path> files) throws IOException, InterruptedException {
        page.table("file", "bytes", "to ours", "pages", "words", "tags");
        Path ours = files.values().iterator().next();
        for (Map.Entry<String, Path> file : files.entrySet()) {
            long size = Files.size(file.getValue());
            page.row(
                    file.getKey(),
                    String.format(Locale.ROOT, "%,d", size),
                    String.format(Locale.ROOT, "%.2f", (double) size / Files.size(ours)),
                    String.valueOf(Proof.pages(file.getValue())),
                    words(ours, file.getValue()),
                    tags(ours, file.getValue()));
        }
    }

    private String words(Path ours, Path theirs) throws IOException, InterruptedException {
        if (pdftotext.isEmpty()) {
            return "not compared";
        }
        Map<String, Long> expected = Proof.words(pdftotext.get(), ours);
        Map<String, Long> found = Proof.words(pdftotext.get(), theirs);
        long all = expected.values().stream().mapToLong(Long::longValue).sum();
        if (!found.equals(expected)) {
            throw new IllegalStateException(theirs + " does not say what " + ours + " says");
        }
        return all + ", the same";
    }

    private static String tags(Path ours, Path theirs) throws IOException {
        Map<String, Integer> expected = Proof.tags(ours);
        Map<String, Integer> found = Proof.tags(theirs);
        if (found.isEmpty()) {
            return "none";
        }
        return found.equals(expected) ? "the same tables" : "not the same: " + found + " for " + expected;
    }
}
