package org.drillwright.print.sheet.term;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.schedule.GroupPlan;
import org.drillwright.plan.schedule.TermPlan;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Type;
import org.drillwright.print.sheet.HandWords;
import org.drillwright.print.text.Typefaces;
import org.drillwright.report.plan.TermText;
import org.drillwright.wording.Message;

/** A term for the hand or the office wall: for each group what is new and what comes again, and what was missed. */
public final class TermSheet {

    private static final double TITLE = 16;
    private static final double WORDS = 9.5;
    private static final double FOOT = 8;

    private final TermPlan plan;
    private final UnaryOperator<String> title;
    private final Naming names;
    private final Sheet sheet;
    private final IntFunction<Box> foot;
    private final Locale language;
    private final Typefaces faces;

    private TermSheet(
            TermPlan plan,
            UnaryOperator<String> title,
            Naming names,
            Sheet sheet,
            IntFunction<Box> foot,
            Locale language,
            Typefaces faces) {
        this.language = language;
        this.plan = plan;
        this.title = title;
        this.names = names;
        this.sheet = sheet;
        this.foot = foot;
        this.faces = faces;
    }

    /**
     * A page for each group, and more where lists are long.
     *
     * @param title what a drill is called, by its id
     * @param mark of the published plan that says the same; empty if there is none
     */
    public static List<Frame> pages(
            TermPlan plan,
            UnaryOperator<String> title,
            Naming names,
            SheetSize size,
            String school,
            String mark,
            Language language,
            Typefaces faces) {
        Sheet lying = Sheet.lying(size, Sheet.NARROW);
        String words = Foot.line(
                HandWords.in(language).mark(mark),
                school,
                Message.of(TermSheet.class, "as.of", Message.day(plan.today())).in(language.locale()));
        IntFunction<Box> foot = Foot.of(new Type(faces, FOOT * Sheet.enlarged(size)), lying, "", words);
        return new TermSheet(plan, title, names, lying, foot, language.locale(), faces).pages(Sheet.enlarged(size));
    }

    private List<Frame> pages(double scale) {
        Flow flow = new Flow(sheet, 1, foot);
        for (GroupPlan group : plan.groups()) {
            flow.turn();
            flow.add(new Type(faces, TITLE * scale)
                    .title(
                            Message.titled(TermText.title(plan), group.group().name())
                                    .in(language),
                            sheet.inner()));
            Type type = new Type(faces, WORDS * scale);
            flow.add(type.paragraph(
                    Face.REGULAR, TermGrid.legend(plan.term(), group).in(language), sheet.inner()));
            List<Box> below = below(group, type);
            double height = Box.height(below);
            TermGrid whole = TermGrid.of(plan.term(), group, title, language, type, sheet.inner());
            TermGrid grid = whole.fitted(flow.room() - height)
                    .or(() -> whole.fitted(flow.room()))
                    .orElseGet(whole::smallest);
            flow.table(grid.head(), grid.rows());
            below.forEach(flow::add);
        }
        return Mirrored.pages(flow.pages(), language, faces);
    }

    private List<Box> below(GroupPlan group, Type type) {
        List<Box> blocks = new ArrayList<>();
        blocks.add(Box.space(0.6 * type.size()));
        Optional.of(TermText.exam(group).stream()
                        .map(sentence -> sentence.in(language))
                        .collect(Collectors.joining(" ")))
                .filter(words -> !words.isEmpty())
                .ifPresent(words -> blocks.add(type.paragraph(Face.BOLD, words, sheet.inner())));
        list(Message.of(TermSheet.class, "missed"), TermText.catchUps(group, names, title), type, blocks);
        list(Message.of(TermSheet.class, "left"), TermText.left(group, title), type, blocks);
        return blocks;
    }

    private void list(Message head, List<Message> sentences, Type type, List<Box> blocks) {
        if (!sentences.isEmpty()) {
            blocks.add(type.paragraph(Face.BOLD, head.in(language), sheet.inner()));
            sentences.forEach(
                    sentence -> blocks.add(type.paragraph(Face.REGULAR, sentence.in(language), sheet.inner())));
        }
    }
}
