package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.evening.Heed;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.OwnBlock;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.page.Block;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Table;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Typefaces;
import org.drillwright.tell.ClassHead;
import org.drillwright.tell.Clock;
import org.drillwright.tell.LessonText;

/** For somebody who takes a class for once: who comes, with which hand, what is new to whom, and what to look out for. */
public final class SubstituteSheet {

    /** Somebody who was away for so many weeks is worth a word; common practice, no source. */
    private static final long LONG_AWAY = 3;

    private SubstituteSheet() {}

    /**
     * One page, or more for a large class.
     *
     * @param helpers those who help tonight, as they are named
     * @param mark of the plan of partners; empty if it has none
     */
    public static List<Frame> pages(
            ClassPlan plan,
            List<Heed> people,
            List<String> helpers,
            Naming names,
            School school,
            SheetSize size,
            String mark,
            Typefaces faces) {
        HandType type = new HandType(faces);
        Sheet sheet = Sheet.upright(size);
        String foot = Feet.words(Feet.mark(mark), school.name(), ClassHead.date(plan));
        Flow flow = new Flow(sheet, 1, Foot.of(type.foot(), sheet, LessonSheet.DEFERRAL, foot));
        flow.add(type.heading().title("For whoever takes this class", sheet.inner()));
        words(ClassHead.of(plan) + ". The timed lesson and the sheet for the wall follow.", type.words(), sheet, flow);
        if (!helpers.isEmpty()) {
            words("Helping: " + String.join(", ", helpers) + ".", type.words(), sheet, flow);
        }
        flow.add(Block.space(type.words().size() / 2));
        flow.add(type.drill().paragraph(Face.BOLD, "The drills", sheet.inner()));
        IntStream.range(0, plan.inOrder().size())
                .forEach(at -> words(drill(plan, at, people), type.words(), sheet, flow));
        own(plan).forEach(said -> words(said, type.words(), sheet, flow));
        flow.add(Block.space(type.words().size() / 2));
        Table table = Table.shared(type.notes(), sheet.inner(), 0, 5, 2.2, 4, 8);
        List<Block> rows =
                people.stream().map(heed -> table.row(row(heed, plan, names))).toList();
        flow.table(table.head(List.of("Who", "Hand", "New to", "Look out for")), rows);
        return flow.pages();
    }

    private static void words(String words, Type type, Sheet sheet, Flow flow) {
        flow.add(type.paragraph(Face.REGULAR, words, sheet.inner()));
    }

    private static String drill(ClassPlan plan, int at, List<Heed> people) {
        String id = plan.inOrder().get(at).id();
        long fresh = people.stream().filter(heed -> heed.newTo().contains(id)).count();
        String known = fresh == 0 ? "known to all" : "new to " + fresh + " of " + people.size();
        return (at + 1) + "  " + plan.title(id) + ", " + known + ".";
    }

    /** Parts that are the school's own, which a stranger won't know. */
    private static List<String> own(ClassPlan plan) {
        List<String> names = plan.brief().blocks().stream().map(OwnBlock::name).toList();
        return plan.lesson().blocks().stream()
                .filter(part -> names.contains(part.name()))
                .map(part -> "At " + Clock.of(part.start()) + "  " + LessonText.timed(part, plan))
                .toList();
    }

    private static List<String> row(Heed heed, ClassPlan plan, Naming names) {
        return List.of(
                names.of(heed.person().name()),
                heed.person().hand().map(Hand::word).orElse(""),
                numbers(heed, plan),
                String.join("; ", lookOut(heed, names)));
    }

    /** The drills by their numbers in the lesson. */
    private static String numbers(Heed heed, ClassPlan plan) {
        if (heed.newTo().size() == plan.inOrder().size() && heed.newTo().size() > 1) {
            return "all";
        }
        return IntStream.range(0, plan.inOrder().size())
                .filter(at -> heed.newTo().contains(plan.inOrder().get(at).id()))
                .mapToObj(at -> String.valueOf(at + 1))
                .collect(Collectors.joining(", "));
    }

    private static List<String> lookOut(Heed heed, Naming names) {
        List<String> words = new ArrayList<>();
        if (!heed.apart().isEmpty()) {
            words.add("never with " + heed.apart().stream().map(names::of).collect(Collectors.joining(", ")));
        }
        if (heed.solo()) {
            words.add("solo work only");
        }
        if (heed.first()) {
            words.add("no class on record yet");
        }
        heed.weeks()
                .filter(weeks -> weeks >= LONG_AWAY)
                .ifPresent(weeks -> words.add("was away for " + weeks + " weeks"));
        return words;
    }
}
