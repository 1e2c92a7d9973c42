package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.evening.Heed;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.OwnBlock;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Table;
import org.drillwright.print.text.Typefaces;
import org.drillwright.report.plan.Clock;

/** For somebody who takes a class for once: who comes, with which hand, what is new to whom, and what to look out for. */
public final class SubstituteSheet {

    /** Somebody who was away for so many weeks is worth a word; common practice, no source. */
    private static final long LONG_AWAY = 3;

    private final ClassPlan plan;
    private final LessonSentences sentences;
    private final HandWords words;
    private final Naming names;
    private final HandType type;
    private final Sheet sheet;
    private final Flow flow;

    private SubstituteSheet(ClassPlan plan, Naming names, School school, SheetSize size, String mark, HandType type) {
        this.plan = plan;
        this.words = HandWords.in(school.language());
        this.sentences = new LessonSentences(plan, words);
        this.names = names;
        this.type = type;
        this.sheet = Sheet.upright(size, Sheet.STAPLED);
        String foot = Foot.line(
                words.mark(mark),
                school.name(),
                words.evening().day(plan.brief().date()));
        this.flow = new Flow(sheet, 1, Foot.of(type.foot(), sheet, words.text(HandWord.DEFERRAL), foot));
    }

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
        SubstituteSheet page = new SubstituteSheet(plan, names, school, size, mark, new HandType(faces));
        page.head(people, helpers);
        page.table(people);
        return Mirrored.pages(page.flow.pages(), school.language().locale(), faces);
    }

    private void head(List<Heed> people, List<String> helpers) {
        flow.add(type.heading().title(words.text(HandWord.SUBSTITUTE), sheet.inner()));
        int drills = plan.lesson().drills().size();
        paragraph(words.text(
                HandWord.CLASS,
                words.evening().day(plan.brief().date()),
                sentences.mode(),
                sentences.people(),
                words.counted(HandWord.DRILLS, drills)));
        if (!helpers.isEmpty()) {
            paragraph(words.text(HandWord.HELPING, String.join(", ", helpers)));
        }
        flow.add(Box.space(type.words().size() / 2));
        flow.add(type.drill().paragraph(Face.BOLD, words.text(HandWord.THE_DRILLS), sheet.inner()));
        IntStream.range(0, plan.inOrder().size()).forEach(at -> paragraph(drill(at, people)));
        own().forEach(this::paragraph);
        flow.add(Box.space(type.words().size() / 2));
    }

    private void table(List<Heed> people) {
        List<List<String>> rows = people.stream().map(this::row).toList();
        List<String> heads = Stream.of(HandWord.WHO, HandWord.HAND, HandWord.NEW_TO, HandWord.LOOK_OUT)
                .map(words::text)
                .toList();
        Table table = Table.shared(type.notes(), sheet.inner(), 0, 5, 2.2, 4, 8).holding(heads, rows);
        flow.table(table.head(heads), rows.stream().map(table::row).toList());
    }

    private void paragraph(String said) {
        flow.add(type.words().paragraph(Face.REGULAR, said, sheet.inner()));
    }

    private String drill(int at, List<Heed> people) {
        String id = plan.inOrder().get(at).id();
        long fresh = people.stream().filter(heed -> heed.newTo().contains(id)).count();
        String titled = (at + 1) + "  " + plan.title(id);
        return fresh == 0
                ? words.text(HandWord.KNOWN_TO_ALL, titled)
                : words.text(HandWord.NEW_TO_SOME, titled, fresh, people.size());
    }

    /** Parts that are the school's own, which a stranger won't know. */
    private List<String> own() {
        List<String> own = plan.brief().blocks().stream().map(OwnBlock::name).toList();
        return plan.lesson().blocks().stream()
                .filter(part -> own.contains(part.name()))
                .map(part -> words.text(HandWord.AT, Clock.of(part.start()), sentences.timed(part)))
                .toList();
    }

    private List<String> row(Heed heed) {
        return List.of(
                names.of(heed.person().name()),
                heed.person()
                        .hand()
                        .map(hand -> words.text(hand == Hand.RIGHT ? HandWord.RIGHT : HandWord.LEFT))
                        .orElse(""),
                numbers(heed),
                String.join("; ", lookOut(heed)));
    }

    /** The drills by their numbers in the lesson. */
    private String numbers(Heed heed) {
        if (heed.newTo().size() == plan.inOrder().size() && heed.newTo().size() > 1) {
            return words.text(HandWord.ALL);
        }
        return IntStream.range(0, plan.inOrder().size())
                .filter(at -> heed.newTo().contains(plan.inOrder().get(at).id()))
                .mapToObj(at -> String.valueOf(at + 1))
                .collect(Collectors.joining(", "));
    }

    private List<String> lookOut(Heed heed) {
        List<String> said = new ArrayList<>();
        if (!heed.apart().isEmpty()) {
            said.add(words.text(
                    HandWord.NEVER_WITH, heed.apart().stream().map(names::of).collect(Collectors.joining(", "))));
        }
        if (heed.solo()) {
            said.add(words.text(HandWord.SOLO_ONLY));
        }
        if (heed.first()) {
            said.add(words.text(HandWord.NO_CLASS_YET));
        }
        heed.weeks()
                .filter(weeks -> weeks >= LONG_AWAY)
                .ifPresent(weeks -> said.add(words.text(HandWord.WAS_AWAY, weeks)));
        return said;
    }
}
