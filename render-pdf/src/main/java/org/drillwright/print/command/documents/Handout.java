package org.drillwright.print.command.documents;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.check.Subject;
import org.drillwright.mark.PrintMark;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.printing.LaidCard;
import org.drillwright.print.command.printing.PaperChoice;
import org.drillwright.print.command.printing.PrintOptions;
import org.drillwright.print.command.printing.Product;
import org.drillwright.print.command.printing.chosen.ChosenDrills;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.handout.Cover;
import org.drillwright.print.handout.Listed;
import org.drillwright.print.handout.Packet;
import org.drillwright.print.impose.Duplex;
import org.drillwright.print.impose.Leaf;
import org.drillwright.print.impose.SheetPlan;
import org.drillwright.print.impose.Stock;
import org.drillwright.print.layout.CardSides;
import org.drillwright.print.layout.SafetyCard;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.pdf.Contents;
import org.drillwright.wording.Message;

/** The cards of a set as a packet for an assistant. */
final class Handout implements Product {

    private final School school;
    private final String title;
    private final ChosenDrills picks;
    private final PrintOptions choices;
    private final SheetSize size;
    private final WholeDocument document;
    private final Labels labels;
    private final List<LaidCard> cards = new ArrayList<>();
    private int pages;

    Handout(
            School school,
            String title,
            ChosenDrills picks,
            PrintOptions choices,
            SheetSize size,
            WholeDocument document) {
        this.school = school;
        this.title = title;
        this.picks = picks;
        this.choices = choices;
        this.size = size;
        this.document = document;
        this.labels = Labels.in(school.language());
    }

    @Override
    public void take(List<LaidCard> drill) {
        cards.addAll(drill);
    }

    @Override
    public void place() {
        Duplex duplex = choices.duplex().orElse(Duplex.LONG_EDGE);
        SheetPlan plan = SheetPlan.on(Stock.of(size)).with(choices.laminate()).with(duplex, choices.shift());
        Label how = duplex == Duplex.LONG_EDGE ? Label.PACKET_LONG : Label.PACKET_SHORT;
        CardSides conduct = SafetyCard.lay(choices.format().grid(), school.name(), labels, document.faces());
        Packet packet = new Packet(
                new Cover(school, title, choices.size(), how, listed()),
                new Leaf(conduct.front(), conduct.back()),
                cards.stream().map(LaidCard::leaf).toList(),
                plan);
        if (!packet.fits()) {
            throw new CannotRun(
                    Message.of(Handout.class, "card.too.large", choices.size().word(), size.word()));
        }
        List<Frame> all = packet.pages(Sheet.upright(size, Sheet.STAPLED), labels, document.faces());
        pages = all.size();
        document.write(all, new Contents(List.of(), true));
    }

    private List<Listed> listed() {
        return picks.drills().stream()
                .flatMap(pick -> pick.entry().subject().stream()
                        .map(Subject::drill)
                        .map(drill -> new Listed(drill, PrintMark.of(drill, school), cards(drill.id()), pick.needs())))
                .filter(listed -> listed.cards() > 0)
                .toList();
    }

    private int cards(String drill) {
        return (int) cards.stream().filter(card -> card.drill().equals(drill)).count();
    }

    @Override
    public void discard() {
        cards.clear();
    }

    @Override
    public Message said() {
        return Message.of(
                Handout.class,
                "handout",
                document.shown(),
                Message.counted(
                        Handout.class, "cards", cards.size(), choices.size().word()),
                Message.counted(
                        Handout.class, "sheets", pages / 2, PaperChoice.of(size).title()));
    }
}
