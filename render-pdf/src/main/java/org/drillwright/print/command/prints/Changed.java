package org.drillwright.print.command.prints;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.mark.PrintMark;
import org.drillwright.mark.PrintRecord;
import org.drillwright.mark.Printed;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.print.command.printing.chosen.ChosenDrill;
import org.drillwright.print.command.printing.chosen.ChosenDrills;
import org.drillwright.wording.Message;

/** Which drills are to be printed again, and which cards they make stale. */
final class Changed {

    private final PrintRecord record;
    private final School home;
    private final School school;
    private final CardSize size;

    /**
     * @param home the settings of the school
     * @param school the same in the language that is printed in
     */
    public Changed(PrintRecord record, School home, School school, CardSize size) {
        this.record = record;
        this.home = home;
        this.school = school;
        this.size = size;
    }

    /** Those whose mark was not printed in this size; and those that cannot be read, so that this is said. */
    public ChosenDrills of(ChosenDrills picks) {
        List<ChosenDrill> changed = picks.drills().stream()
                .filter(pick -> drill(pick)
                        .filter(drill -> record.has(mark(drill), size))
                        .isEmpty())
                .toList();
        return new ChosenDrills(picks.title(), changed, picks.absent());
    }

    /** What to write down once they are printed. */
    public List<Printed> lines(ChosenDrills printed, LocalDate day) {
        return drills(printed)
                .map(drill -> new Printed(day, mark(drill), drill.id(), size, language(drill)))
                .toList();
    }

    /** The older cards of what is printed, a line each: to be taken off the rings. */
    public List<Message> recall(ChosenDrills printed) {
        return drills(printed)
                .flatMap(drill -> record.older(drill.id(), mark(drill), language(drill)).stream()
                        .map(old -> line(old, drill)))
                .toList();
    }

    private static Message line(Printed old, Drill drill) {
        return Message.of(
                Changed.class,
                "old.card",
                old.mark().shown(),
                old.size().word(),
                drill.title(),
                Message.day(old.date()));
    }

    private PrintMark mark(Drill drill) {
        return PrintMark.of(drill, school);
    }

    /** None if it is printed as it would be by itself. */
    private Optional<Language> language(Drill drill) {
        boolean byItself = drill.madeFrom().isEmpty() && school.language().equals(home.language());
        return byItself ? Optional.empty() : Optional.of(school.language());
    }

    private static Stream<Drill> drills(ChosenDrills picks) {
        return picks.drills().stream().flatMap(pick -> drill(pick).stream());
    }

    private static Optional<Drill> drill(ChosenDrill pick) {
        return pick.entry().subject().map(Subject::drill);
    }
}
