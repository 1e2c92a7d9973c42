package org.drillwright.formatter;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/** Whatever is tidied stays the same drill with the same remarks, and tidying it again changes nothing. */
class FormatterProperties {

    @Property(tries = 2000)
    void drills_however_they_are_written(@ForAll long seed) {
        Untidy untidy = new Untidy(seed);
        String text = untidy.write();
        boolean taken = Tidying.isTaken(text);
        Statistics.collect(taken);
        Statistics.coverage(check -> check.check(true).percentage(share -> share > 25));
        Assume.that(taken);
        Tidying.assertKept(text, untidy.remarks());
    }
}
