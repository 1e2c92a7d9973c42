package org.drillwright.record;

/** What is looked at in a record. */
public enum RecordRule {
    COLUMNS("record-columns"),
    WHOLE_LINE("record-whole-line"),
    BATCH("record-batch"),
    ONCE("record-once"),
    TAKEN_BACK("record-taken-back"),
    KNOWN_NAME("record-known-name"),
    RIGHT_WORD("record-right-word");

    private final String id;

    RecordRule(String id) {
        this.id = id;
    }

    /** The id that findings carry. */
    public String id() {
        return id;
    }
}
