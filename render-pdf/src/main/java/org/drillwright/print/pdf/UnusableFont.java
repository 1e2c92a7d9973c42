package org.drillwright.print.pdf;

/** A font that cards cannot be set in. The message is the end of a sentence: {@code it is not a TrueType font}. */
public final class UnusableFont extends Exception {

    private static final long serialVersionUID = 1;

    UnusableFont(String why) {
        super(why);
    }

    UnusableFont(String why, Exception problem) {
        super(why, problem);
    }
}
