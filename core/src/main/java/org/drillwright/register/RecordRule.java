package org.drillwright.register;

import org.drillwright.wording.Message;

/** What is looked at in a record. */
public enum RecordRule {
    UNREADABLE("record-unreadable", "record-unreadable.why"),
    LINE_BROKEN("record-line-broken", "record-line-broken.why"),
    BATCH_BROKEN("record-batch-broken", "record-batch-broken.why"),
    LINE_TWICE("record-line-twice"),
    TAKES_BACK_NOTHING("record-takes-back-nothing"),
    UNKNOWN_NAME("record-unknown-name"),
    WRONG_WORD("record-wrong-word");

    private final String id;
    private final String why;

    RecordRule(String id) {
        this(id, "");
    }

    /** @param why key of the words; empty if there are none */
    RecordRule(String id, String why) {
        this.id = id;
        this.why = why;
    }

    /** The id that findings carry. */
    public String id() {
        return id;
    }

    /** One sentence: what holds, or what would happen otherwise. */
    public Message asks() {
        return Message.of(RecordRule.class, id + ".asks");
    }

    /** One sentence more on why it is looked at; may be empty. */
    public Message why() {
        return why.isEmpty() ? Message.none() : Message.of(RecordRule.class, why);
    }
}
