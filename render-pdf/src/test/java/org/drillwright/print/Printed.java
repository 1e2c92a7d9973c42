package org.drillwright.print;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.drillwright.check.Subject;
import org.drillwright.explain.SetWork;
import org.drillwright.mark.PrintMark;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.evening.Heed;
import org.drillwright.plan.evening.Wished;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.pair.Pairing;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.partner.TwoSession;
import org.drillwright.plan.progress.Progress;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.roster.Timing;
import org.drillwright.plan.schedule.TermPlan;
import org.drillwright.plan.schedule.TermPlanner;
import org.drillwright.print.booklet.Booklet;
import org.drillwright.print.booklet.BookletEntry;
import org.drillwright.print.booklet.Index;
import org.drillwright.print.booklet.PageGrid;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.handout.Cover;
import org.drillwright.print.handout.Listed;
import org.drillwright.print.handout.SignOff;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.sheet.HallSheet;
import org.drillwright.print.sheet.LessonSheet;
import org.drillwright.print.sheet.ProgressSheet;
import org.drillwright.print.sheet.SessionSheet;
import org.drillwright.print.sheet.SubstituteSheet;
import org.drillwright.print.sheet.WallSheet;
import org.drillwright.print.sheet.term.TermSheet;
import org.drillwright.print.sheet.wall.EveningSheet;
import org.drillwright.school.ClassFolder;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.TermFolder;

/**
 * Every kind of page that the example school prints, in English or in a language made up.
 *
 * @param size of the sheets
 */
public record Printed(Optional<MadeUp> language, SheetSize size) {

    private static final Family FACES = Family.dejaVu();
    private static final String MARK = "C31H-J";

    /** What is planned for the example's class and its term, whatever the language. */
    private record Planned(ClassFolder classes, ClassBrief brief, PairingPlan walked, PairingPlan free, TermPlan term) {

        private static final Planned EXAMPLE = plan();

        private static Planned plan() {
            try {
                SchoolFolder school = SchoolFolder.open(Path.of("..", "drills"));
                ClassFolder classes = ClassFolder.open(school);
                ClassBrief brief = classes.read(classes.named("tonight").orElseThrow())
                        .value()
                        .orElseThrow();
                ClassPlan evening = evening(classes, brief, school.school(), UnaryOperator.identity());
                TermFolder terms = TermFolder.open(school, classes);
                TermPlan term = new TermPlanner(
                                terms.read(terms.named("winter").orElseThrow())
                                        .value()
                                        .orElseThrow(),
                                classes.drills(),
                                classes.roster().orElseThrow(),
                                classes.history(),
                                Duration.ofMinutes(15),
                                LocalDate.of(2027, 1, 14))
                        .plan("winter", Optional.empty());
                return new Planned(
                        classes,
                        brief,
                        Pairing.of(evening.pairing()).plan(),
                        Pairing.of(evening.moving(Movement.FREE).pairing()).plan(),
                        term);
            } catch (IOException problem) {
                throw new java.io.UncheckedIOException(problem);
            }
        }

        private static ClassPlan evening(
                ClassFolder classes, ClassBrief brief, School school, UnaryOperator<Drill> said) {
            Map<String, Drill> drills = new LinkedHashMap<>(classes.drills());
            drills.replaceAll((id, drill) -> said.apply(drill));
            return ClassPlan.of(
                    school, classes.roster().orElseThrow(), brief, classes.history(), Wished.of(school, brief, drills));
        }
    }

    /** Each kind of page by its name. */
    public Map<String, List<Frame>> all() {
        Planned planned = Planned.EXAMPLE;
        Roster roster = planned.classes().roster().orElseThrow();
        ClassPlan evening = Planned.evening(planned.classes(), planned.brief(), school(), this::said);
        Naming names = new Naming(roster.names().stream().collect(Collectors.toMap(name -> name, this::said)));
        Labels labels = Labels.in(school().language());
        Map<String, List<Frame>> all = new LinkedHashMap<>();
        all.put("lesson", LessonSheet.pages(evening, planned.walked(), school(), size, MARK, FACES));
        all.put(
                "substitute",
                SubstituteSheet.pages(
                        evening,
                        Heed.of(evening, roster, planned.classes().history()),
                        List.of(said("Marlow")),
                        names,
                        school(),
                        size,
                        MARK,
                        FACES));
        EveningSheet walked = EveningSheet.of(evening, planned.walked(), names, size, school(), MARK, FACES);
        EveningSheet free = EveningSheet.of(evening, planned.free(), names, size, school(), MARK, FACES);
        all.put("wall-walked", walked.pages());
        all.put("wall-free", free.pages());
        all.put("slips-walked", walked.slips());
        all.put("slips-free", free.slips());
        all.put("wall-by-round", WallSheet.pages(evening, planned.free(), names, size, school(), MARK, FACES));
        Floor floor = Floor.of(evening.lanes().orElseThrow(), 12);
        all.put("hall", HallSheet.pages(floor, planned.walked(), size, school(), MARK, FACES));
        all.put("progress", progress(roster, names));
        all.put("session", session(names));
        all.put(
                "term",
                TermSheet.pages(
                        planned.term(),
                        id -> titles().getOrDefault(id, id),
                        names,
                        size,
                        school().name(),
                        MARK,
                        school().language(),
                        FACES));
        Sheet sheet = Sheet.upright(size, Sheet.STAPLED);
        all.put(
                "cover",
                new Cover(school(), said("intermediate foil"), CardSize.A6, Label.PACKET_LONG, listed())
                        .pages(sheet, labels, FACES));
        all.put(
                "sign-off",
                new SignOff(sheet, labels, FACES)
                        .pages(listed().stream().map(one -> one.drill().title()).toList(), 3, school().name()));
        all.put("booklet", booklet(labels));
        return all;
    }

    public School school() {
        School school = Example.drills().get(0).school();
        return language.map(made -> made.said(school)).orElse(school);
    }

    private String said(String words) {
        return language.map(made -> made.said(words)).orElse(words);
    }

    private Drill said(Drill drill) {
        return language.map(made -> made.said(drill)).orElse(drill);
    }

    private List<Drill> drills() {
        return Example.drills().stream().map(Subject::drill).map(this::said).toList();
    }

    private Map<String, String> titles() {
        Map<String, String> titles = new HashMap<>();
        drills().forEach(drill -> titles.put(drill.id(), drill.title()));
        return titles;
    }

    private List<Frame> progress(Roster roster, Naming names) {
        Progress progress = Progress.of(
                drills(), roster, Knowledge.of(roster, Planned.EXAMPLE.classes().history()));
        return ProgressSheet.pages(progress, names, size, school(), FACES);
    }

    private List<Frame> session(Naming names) {
        Duration time = Timing.USUAL.opening();
        List<TwoSession.Block> blocks = drills().stream()
                .limit(4)
                .map(drill -> new TwoSession.Block(drill.id(), time, time, "Ash", drill.worksOn()))
                .toList();
        Map<String, Drill> byId = drills().stream().collect(Collectors.toMap(Drill::id, drill -> drill));
        return SessionSheet.pages(new TwoSession("Ash", "Dee", blocks, time, 6), names, school(), byId, size, FACES);
    }

    private List<Listed> listed() {
        return drills().stream()
                .map(drill -> new Listed(
                        drill,
                        PrintMark.of(drill, school()),
                        1,
                        List.of(new CardSubject.Place(said("intermediate foil"), 3, 12))))
                .toList();
    }

    private List<Frame> booklet(Labels labels) {
        List<Subject> drills = Example.drills();
        List<BookletEntry> entries = drills.stream()
                .map(drill ->
                        new BookletEntry(language.map(made -> made.card(drill)).orElseGet(() -> Example.card(drill))))
                .toList();
        Set<String> pages = Set.of("parry-of-quarte", "cut-over");
        return new Booklet(
                        said("Larkspur"),
                        entries,
                        Map.of(
                                said("All drills"),
                                SetWork.of(drills, drills.get(0).school())),
                        Map.of(said("All drills"), drills.size()),
                        new Index(Map.of(said("distance"), pages), Map.of(said("straight riposte"), pages)))
                .pages(PageGrid.half(size), labels, FACES);
    }
}
