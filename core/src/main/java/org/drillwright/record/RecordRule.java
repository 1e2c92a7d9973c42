package org.drillwright.record;

/** What is looked at in a record. */
public enum RecordRule {
    UNREADABLE(
            "record-unreadable",
            "The record is a table in plain text under its own heading. Of what cannot be read as one, nothing is counted."),
    LINE_BROKEN(
            "record-line-broken",
            "A line tells a day, a drill and what was done. Of half a line nobody knows what was meant, so it is not counted."),
    BATCH_BROKEN(
            "record-batch-broken",
            "The lines of one class stand together. A class that is told in part is told anew as a whole."),
    LINE_TWICE("record-line-twice", "What is told twice was done once."),
    TAKES_BACK_NOTHING(
            "record-takes-back-nothing",
            "A line that takes another back is written as that one is; otherwise both stay."),
    UNKNOWN_NAME(
            "record-unknown-name",
            "A name of nobody, or of no drill: what is told of it counts again when the name comes back."),
    WRONG_WORD(
            "record-wrong-word",
            "Dates and words that can be read in two ways, or in none, would be counted for another day or not at all.");

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
