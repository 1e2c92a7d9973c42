package org.drillwright.print.command.printing;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.drillwright.model.School;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.Parts;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.impose.Imposition;
import org.drillwright.print.impose.Leaf;
import org.drillwright.print.impose.Volumes;
import org.drillwright.print.layout.block.SheetNote;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Chapter;
import org.drillwright.print.pdf.Contents;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PdfWriter;
import org.drillwright.wording.Message;

/** Cards as a document with bookmarks by set; a large number as volumes, written one after another. */
final class Documents implements Product {

    private final PrintOptions choices;
    private final DocumentInfo info;
    private final Labels labels;
    private final Family faces;
    private final Parts parts;
    private final String shown;
    private final int most;
    private final List<LaidCard> open = new ArrayList<>();
    private int cards;
    private int sheets;
    private boolean backs;

    Documents(PrintOptions choices, School school, String title, Family faces, Path target, String shown) {
        this(choices, school, title, faces, target, shown, Volumes.CARDS);
    }

    /** @param most how many cards a volume holds; the cards of a drill are never parted, a drill of more stands alone */
    Documents(PrintOptions choices, School school, String title, Family faces, Path target, String shown, int most) {
        this.most = most;
        this.choices = choices;
        this.info = new DocumentInfo(title, school.language().locale());
        this.labels = Labels.in(school.language());
        this.faces = faces;
        this.parts = new Parts(target, Kind.PDF);
        this.shown = shown;
    }

    @Override
    public void take(List<LaidCard> drill) {
        if (!open.isEmpty() && open.size() + drill.size() > most) {
            close();
        }
        open.addAll(drill);
        cards += drill.size();
    }

    private void close() {
        Map<String, Integer> sets = new LinkedHashMap<>();
        open.forEach(card -> sets.merge(card.set(), 1, Integer::sum));
        List<Chapter> chapters = sets.entrySet().stream()
                .map(set -> new Chapter(set.getKey(), set.getValue()))
                .toList();
        List<Leaf> leaves = open.stream().map(LaidCard::leaf).toList();
        boolean bothSides = leaves.stream().anyMatch(leaf -> leaf.back().isPresent());
        List<Frame> sides = pages(leaves, bothSides);
        open.clear();
        sheets += bothSides ? sides.size() / 2 : sides.size();
        backs |= bothSides;
        parts.add(write(sides, new Contents(chapters, bothSides)));
    }

    /** Counts may go over to some backs only: then the other backs are blank pages. */
    private List<Frame> pages(List<Leaf> leaves, boolean bothSides) {
        return choices.plan(bothSides)
                .map(plan -> Imposition.impose(leaves, plan, SheetNote.of(labels, faces)))
                .orElseGet(() -> leaves.stream()
                        .flatMap(leaf -> bothSides
                                ? Stream.of(leaf.front(), leaf.back().orElseGet(() -> blank(leaf.front())))
                                : Stream.of(leaf.front()))
                        .toList());
    }

    private static Frame blank(Frame like) {
        return new Frame(like.width(), like.height(), like.clear(), List.of(), List.of());
    }

    private byte[] write(List<Frame> sides, Contents contents) {
        return new PdfWriter(faces).bytes(sides, contents, info);
    }

    @Override
    public void place() {
        if (!open.isEmpty()) {
            close();
        }
        parts.place(Volumes::file);
    }

    @Override
    public void discard() {
        parts.discard();
    }

    @Override
    public Message said() {
        Message made = Message.of(
                Documents.class,
                "documents.size",
                name(),
                CountedNoun.of(cards, "card"),
                choices.size().word());
        Message on = choices.paper() == PaperChoice.CARD
                ? Message.of(Documents.class, "documents.one.to.a.page")
                : Message.of(
                        Documents.class,
                        "documents.on.sheets",
                        CountedNoun.of(sheets, "sheet"),
                        choices.paper().title());
        return Message.of(Documents.class, backs ? "documents.both.sides" : "documents.one.side", made, on);
    }

    private Message name() {
        return parts.count() == 1
                ? Message.plain(shown)
                : Message.of(
                        Documents.class,
                        "documents.volumes",
                        Volumes.file(shown, 1, parts.count()),
                        CountedNoun.of(parts.count() - 1, "volume"));
    }
}
