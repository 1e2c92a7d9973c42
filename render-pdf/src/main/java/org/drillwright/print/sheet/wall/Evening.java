package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;

/**
 * The rounds that are still to be worked, told by name.
 *
 * @param columns one for each round, in their order
 * @param rows one for each person, by name
 * @param keys what the signs of the cells mean, in the order in which they are explained
 */
record Evening(List<Column> columns, List<Row> rows, Map<String, String> keys) {

    Evening {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * A round.
     *
     * @param letter the same for all rounds of a drill
     */
    record Column(int round, String letter, String drill) {}

    /**
     * Where somebody works all evening.
     *
     * @param cells one for each column
     */
    record Row(String name, List<Cell> cells) {
        Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * Where somebody works in a round.
     *
     * @param place empty for somebody who isn't there
     * @param sign a letter that the keys explain; mostly empty
     * @param walks whether one comes from another place
     * @param leads whether one leads first
     */
    record Cell(String place, String sign, boolean walks, boolean leads) {
        static final Cell AWAY = new Cell("", "", false, false);
    }

    static Evening of(PairingPlan pairs, Naming names, WallTexts words) {
        List<Round> rounds = pairs.rounds().stream().skip(pairs.firstPlanned()).toList();
        NoteLetters signs = new NoteLetters(names, words);
        List<Row> rows = new ArrayList<>();
        for (String person : ByName.people(rounds, names, words)) {
            rows.add(new Row(
                    names.of(person),
                    rounds.stream()
                            .map(round -> cell(person, round, pairs, signs))
                            .toList()));
        }
        return new Evening(columns(pairs), rows, signs.explained());
    }

    /** Only some of the rounds. */
    Evening only(IntPredicate round) {
        List<Integer> kept = IntStream.range(0, columns.size())
                .filter(at -> round.test(columns.get(at).round()))
                .boxed()
                .toList();
        return new Evening(
                kept.stream().map(columns::get).toList(),
                rows.stream()
                        .map(row -> new Row(
                                row.name(), kept.stream().map(row.cells()::get).toList()))
                        .toList(),
                keys);
    }

    /** A drill's letter stays when only rounds to come are printed again. */
    static List<Column> columns(PairingPlan pairs) {
        Map<String, String> letters = new LinkedHashMap<>();
        for (Round round : pairs.rounds()) {
            letters.putIfAbsent(round.drill(), letter(letters.size()));
        }
        return pairs.rounds().stream()
                .skip(pairs.firstPlanned())
                .map(round -> new Column(round.number(), letters.getOrDefault(round.drill(), ""), round.drill()))
                .toList();
    }

    /** A to Z, then AA to AZ and so on. */
    private static String letter(int at) {
        String last = String.valueOf((char) ('A' + at % 26));
        return at < 26 ? last : letter(at / 26 - 1) + last;
    }

    /** With somebody who helps, it is for the two to say. */
    static boolean leads(String person, Group group) {
        return group.people().size() > 1 && group.people().get(0).equals(person);
    }

    private static Cell cell(String person, Round round, PairingPlan pairs, NoteLetters signs) {
        return round.groupOf(person)
                .map(group -> new Cell(
                        group.place() == 0 ? NoteLetters.ALONE : String.valueOf(group.place()),
                        signs.of(group),
                        round.number() == 1 || pairs.movers(round.number()).contains(person),
                        leads(person, group)))
                .orElseGet(() -> {
                    signs.away();
                    return Cell.AWAY;
                });
    }
}
