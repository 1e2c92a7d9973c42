package org.drillwright.plan.rounds;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A table of which some rounds are given: in these whoever stands before a gap is settled, the others are found one after
 * the other, each at its best beside all that are known.
 *
 * @param least for each round, the extras it needs
 * @param open the rounds to be found
 */
record Completed(Problem problem, List<Extras> least, BitSet open) {

    /** All rounds; empty if somebody before a gap may join nobody. */
    Optional<PartnerTable> table(PartnerTable given) {
        Optional<PartnerTable> settled = settled(given);
        return settled.map(this::filled);
    }

    /** The given rounds with those before gaps settled. */
    Optional<PartnerTable> settled(PartnerTable given) {
        PartnerTable table = given;
        for (int round = 0; round < problem.rounds(); round++) {
            int gaps = open.get(round) ? 0 : count(table, round, problem.blank());
            Extras need = least.get(round);
            int blanks = Math.min(gaps, need.blanks());
            if (gaps - blanks > need.threes()) {
                return Optional.empty();
            }
            if (gaps > blanks) {
                Extras extras = new Extras(helped(table, round), gaps - blanks, need.watched(), blanks);
                int upTo = round;
                TableCost before = TableCost.of(problem, table, at -> at < upTo && !open.get(at));
                Optional<int[]> row = RoundMatching.of(problem, round, extras, before::cost)
                        .keeping(table.row(round))
                        .least(0, Optional.empty());
                if (row.isEmpty()) {
                    return Optional.empty();
                }
                table = table.with(round, row.get());
            }
        }
        return Optional.of(table);
    }

    private PartnerTable filled(PartnerTable given) {
        PartnerTable table = given;
        BitSet found = new BitSet();
        found.set(0, problem.rounds());
        found.andNot(open);
        for (int round = open.nextSetBit(0); round >= 0; round = open.nextSetBit(round + 1)) {
            TableCost others = TableCost.of(problem, table, found::get);
            int[] row = RoundMatching.of(problem, round, least.get(round), others::cost)
                    .least(0, Optional.empty())
                    .orElseThrow();
            table = table.with(round, row);
            found.set(round);
        }
        return table;
    }

    /** What each round of a table has besides safe pairs. */
    List<Extras> extras(PartnerTable table) {
        List<Extras> extras = new ArrayList<>();
        for (int round = 0; round < problem.rounds(); round++) {
            int at = round;
            int threes = (int) IntStream.range(0, problem.students())
                    .filter(student -> problem.joined(table.mate(at, student)) >= 0)
                    .count();
            extras.add(new Extras(
                    helped(table, round), threes, watched(table, round), count(table, round, problem.blank())));
        }
        return List.copyOf(extras);
    }

    private int count(PartnerTable table, int round, int mate) {
        return (int) IntStream.range(0, problem.students())
                .filter(student -> table.mate(round, student) == mate)
                .count();
    }

    private int helped(PartnerTable table, int round) {
        return IntStream.range(problem.students(), problem.blank())
                .map(helper -> count(table, round, helper))
                .sum();
    }

    private int watched(PartnerTable table, int round) {
        int watched = 0;
        for (int student = 0; student < problem.students(); student++) {
            int mate = table.mate(round, student);
            boolean pair = problem.isStudent(mate) && mate > student && problem.areBothNew(round, student, mate);
            int middle = problem.joined(mate);
            watched += pair || (middle >= 0 && problem.areBothNew(round, student, middle)) ? 1 : 0;
        }
        return watched;
    }
}
