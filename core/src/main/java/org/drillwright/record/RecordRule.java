package org.drillwright.record;

/** What is looked at in a record. */
public enum RecordRule {
    UNREADABLE(
            "record-unreadable",
            "The record is a plain text table under its own heading. Whatever cannot be read as one is not counted."),
    LINE_BROKEN(
            "record-line-broken",
            "A line gives a day, a drill and what was done. Nobody knows what half a line meant, so it is not"
                    + " counted."),
    BATCH_BROKEN(
            "record-batch-broken",
            "The lines of one class stay together. A class recorded in part has to be recorded again in full."),
    LINE_TWICE("record-line-twice", "Something recorded twice was done only once."),
    TAKES_BACK_NOTHING(
            "record-takes-back-nothing",
            "A line that takes back another is written exactly as that one; otherwise both stay."),
    UNKNOWN_NAME(
            "record-unknown-name", "A name that fits no person or drill: its lines count again once the name is back."),
    WRONG_WORD(
            "record-wrong-word",
            "Dates and words that can be read in two ways, or not at all, would be counted for the wrong day or"
                    + " not at all.");

    private final String id;
    private final String why;

    RecordRule(String id, String why) {
        this.id = id;
        this.why = why;
    }

    /** The id that findings carry. */
    public String id() {
        return id;
    }

    /** One or two sentences on why it is looked at. */
    public String why() {
        return why;
    }
}
