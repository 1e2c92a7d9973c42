package org.drillwright.plan.rounds;

import java.util.stream.IntStream;

/** A table's rows as tests write them: who works with whom in one round. */
final class Rows {

    private Rows() {}

    static int[] of(PartnerTable table, int round, int students) {
        return IntStream.range(0, students)
                .map(student -> table.mate(round, student))
                .toArray();
    }
}
