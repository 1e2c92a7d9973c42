package org.drillwright.print.sheet.wall;

import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.plan.pair.Changeover;
import org.drillwright.plan.pair.Walk;
import org.drillwright.plan.roster.Naming;

/** Says on a sheet how people change over. */
public record ChangeSentences(WallTexts words, Naming names) {

    public String of(Changeover change) {
        if (change instanceof Changeover.Still still) {
            return words.text(WallText.STILL, listed(still.people()));
        } else if (change instanceof Changeover.Unformed unformed) {
            return words.text(WallText.NO_FORMING, unformed.drill(), why(unformed));
        } else if (change instanceof Changeover.Crossing crossing) {
            return crossing.people().isEmpty()
                    ? words.text(WallText.CROSSED_NOBODY, crossing.after())
                    : words.text(WallText.CROSSED, crossing.after(), listed(crossing.people()));
        } else if (change instanceof Changeover.LineA line) {
            return lineA(line);
        } else if (change instanceof Changeover.LineB line) {
            return words.text(WallText.LINE_B, listed(line.walk().moves()));
        } else if (change instanceof Changeover.Unpaired unpaired) {
            return words.text(unpaired.joins() ? WallText.JOINS_PAIR : WallText.RESTS);
        } else if (change instanceof Changeover.PostUp up) {
            return words.text(up.isAlways() ? WallText.POST_UP_ALWAYS : WallText.POST_UP);
        } else if (change instanceof Changeover.Read read) {
            return words.text(read.isBetter() ? WallText.READ_SHEET_MEET : WallText.READ_SHEET);
        }
        return words.text(WallText.RING);
    }

    private String why(Changeover.Unformed unformed) {
        return switch (unformed.why()) {
            case TOO_MANY_NEW -> words.text(WallText.TOO_MANY_NEW);
            case ONE_LINE ->
                words.text(
                        unformed.helpers() == 0 ? WallText.ONE_LINE : WallText.ONE_LINE_HELPED,
                        unformed.together(),
                        unformed.others(),
                        unformed.helpers());
            case UNEVEN -> words.text(WallText.UNEVEN);
            case REST -> words.text(WallText.MAY_NOT_JOIN);
        };
    }

    private String lineA(Changeover.LineA line) {
        Walk walk = line.walk();
        String stays = listed(walk.stays());
        if (line.isAll()) {
            return words.text(WallText.LINE_A, stays);
        }
        return words.text(
                walk.from() == walk.to() ? WallText.LINE_A_ROUND : WallText.LINE_A_ROUNDS,
                LineRounds.numbers(walk, words),
                stays);
    }

    private String listed(List<String> people) {
        return people.stream()
                .map(name -> name.equals(Walk.REST) ? words.text(WallText.NOBODY) : words.helper(name, names))
                .collect(Collectors.joining(", "));
    }
}
