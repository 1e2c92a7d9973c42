package org.drillwright.plan.course;

import java.util.List;

/**
 * When a drill is to come again, in weeks after the working that counted last.
 *
 * @param earliest before that it is practice, and no step
 * @param wished when it is best
 * @param latest after that it is late
 */
record Rung(int earliest, int wished, int latest) {

    /**
     * The reviews of a drill after it was new, one behind the other, each farther off than the last.
     *
     * <p>Why over weeks at all: practice of movements that is spread over days is kept better than the same practice in one
     * day (Shea, Lai, Black and Park 2000, Human Movement Science 19), and massed practice harms learning (Lee and Genovese
     * 1988, Research Quarterly for Exercise and Sport 59). Why growing gaps: the best gap grows with the time until it is
     * needed, from 20 to 40 per cent of a week to 5 to 10 per cent of a year (Cepeda and others 2008, Psychological
     * Science 19; facts, not movements); gaps that grow end level with equal ones and keep more on the way (Kang and others
     * 2014, Psychonomic Bulletin and Review 21; words). Of these the abstracts were read; Cepeda and others 2006
     * (Psychological Bulletin 132) is from memory. None is about fencing: that it is these four rungs is a choice.
     */
    public static final List<Rung> LADDER =
            List.of(new Rung(1, 1, 1), new Rung(1, 2, 3), new Rung(2, 4, 6), new Rung(4, 8, 12));
}
