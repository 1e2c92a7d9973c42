package org.drillwright.print.sheet.wall;

import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.plan.pair.Change;
import org.drillwright.plan.pair.Walk;
import org.drillwright.plan.roster.Naming;

/** Says on a sheet how people change over. */
public record ChangeSentences(Words words, Naming names) {

    public String of(Change change) {
        if (change instanceof Change.Still still) {
            return words.text(Word.STILL, listed(still.people()));
        } else if (change instanceof Change.Unformed unformed) {
            return words.text(Word.NO_FORMING, unformed.drill(), why(unformed));
        } else if (change instanceof Change.Crossing crossing) {
            return crossing.people().isEmpty()
                    ? words.text(Word.CROSSED_NOBODY, crossing.after())
                    : words.text(Word.CROSSED, crossing.after(), listed(crossing.people()));
        } else if (change instanceof Change.LineA line) {
            return lineA(line);
        } else if (change instanceof Change.LineB line) {
            return words.text(Word.LINE_B, listed(line.walk().moves()));
        } else if (change instanceof Change.Unpaired unpaired) {
            return words.text(unpaired.joins() ? Word.JOINS_PAIR : Word.RESTS);
        } else if (change instanceof Change.PostUp up) {
            return words.text(up.isAlways() ? Word.POST_UP_ALWAYS : Word.POST_UP);
        } else if (change instanceof Change.Read read) {
            return words.text(read.isBetter() ? Word.READ_SHEET_MEET : Word.READ_SHEET);
        }
        return words.text(Word.RING);
    }

    private String why(Change.Unformed unformed) {
        return switch (unformed.why()) {
            case TOO_MANY_NEW -> words.text(Word.TOO_MANY_NEW);
            case ONE_LINE ->
                words.text(
                        unformed.helpers() == 0 ? Word.ONE_LINE : Word.ONE_LINE_HELPED,
                        unformed.together(),
                        unformed.others(),
                        unformed.helpers());
            case UNEVEN -> words.text(Word.UNEVEN);
            case REST -> words.text(Word.MAY_NOT_JOIN);
        };
    }

    private String lineA(Change.LineA line) {
        Walk walk = line.walk();
        String stays = listed(walk.stays());
        if (line.isAll()) {
            return words.text(Word.LINE_A, stays);
        }
        return words.text(
                walk.from() == walk.to() ? Word.LINE_A_ROUND : Word.LINE_A_ROUNDS, Lines.numbers(walk, words), stays);
    }

    private String listed(List<String> people) {
        return people.stream()
                .map(name -> name.equals(Walk.REST) ? words.text(Word.NOBODY) : words.helper(name, names))
                .collect(Collectors.joining(", "));
    }
}
