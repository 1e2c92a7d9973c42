package org.drillwright.plan.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.model.Drill;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.table.SpreadsheetCell;

/**
 * A table of drills by people.
 *
 * @param drills the rows, in teaching order
 * @param people the columns
 */
public record Progress(List<Drill> drills, List<Person> people, Knowledge knowledge) {

    public Progress {
        drills = List.copyOf(drills);
        people = List.copyOf(people);
    }

    public static Progress of(List<Drill> drills, Roster roster, Knowledge knowledge) {
        return new Progress(drills, roster.people(), knowledge);
    }

    public Standing standing(String person, Drill drill) {
        if (knowledge.knows(person, drill.id())) {
            return Standing.KNOWN;
        }
        return knowledge.of(person).containsAll(drill.needs()) ? Standing.NEXT : Standing.LATER;
    }

    /** The drills that a person may learn next, in teaching order. */
    public List<Drill> next(String person) {
        return drills.stream()
                .filter(drill -> standing(person, drill) == Standing.NEXT)
                .toList();
    }

    /** What a person still lacks for a drill, in the order in which the drill needs it. */
    public List<String> lacking(String person, Drill drill) {
        return drill.needs().stream()
                .filter(need -> !knowledge.knows(person, need))
                .toList();
    }

    /** How many of the people know a drill. */
    public int knowing(Drill drill) {
        return (int) people.stream()
                .filter(person -> knowledge.knows(person.name(), drill.id()))
                .count();
    }

    /** The table as a spreadsheet reads it: a heading, then a line for each drill. */
    public String csv() {
        List<String> heading = new ArrayList<>(List.of("drill", "level"));
        people.forEach(person -> heading.add(person.name()));
        return SpreadsheetCell.line(heading) + "\n"
                + drills.stream()
                        .map(drill -> SpreadsheetCell.line(row(drill)) + "\n")
                        .collect(Collectors.joining());
    }

    private List<String> row(Drill drill) {
        List<String> row = new ArrayList<>(List.of(drill.id(), drill.level()));
        people.forEach(person -> row.add(standing(person.name(), drill).word()));
        return row;
    }
}
