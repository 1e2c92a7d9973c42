package org.drillwright.phrase;

import org.drillwright.wording.Message;

/**
 * A place in a drill in words: {@code count 2}, {@code the opening}. A gap may ask for {@code since} it, or {@code on} it; and
 * since what something has been unknown.
 */
public final class Where {

    /** The turn itself. */
    static final Message HERE = Message.of(Where.class, "where.here");

    static final Message BEGINNING = Message.of(Where.class, "where.beginning");
    static final Message START = Message.of(Where.class, "where.start");
    static final Message OPENING = Message.of(Where.class, "where.opening");
    static final Message CLOSING = Message.of(Where.class, "where.closing");
    static final Message GUARD = Message.of(Where.class, "where.guard");
    static final Message BLADES = Message.of(Where.class, "where.blades");
    static final Message PARRY = Message.of(Where.class, "where.parry");
    static final Message WORDS_NOT_READ = Message.of(Where.class, "where.not-read");
    static final Message DRAWN_PARRY = Message.of(Where.class, "where.drawn-parry");

    /** Something that nothing is known of. */
    public static final Message ATTACK = Message.of(Where.class, "where.attack");

    private Where() {}

    /** @param number as people count them, from 1 */
    public static Message count(int number) {
        return Message.of(Where.class, "where.count", number);
    }

    /** @param name the key of a part around the counts: {@code start}, {@code opening} or {@code closing} */
    public static Message part(String name) {
        return Message.of(Where.class, "where." + name);
    }
}
