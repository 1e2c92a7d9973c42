package org.drillwright.read;

/** What reading itself demands of a file, before any rule looks at the drill. */
public enum ReadingRule {
    PLAIN_TEXT(
            "plain-text",
            "A drill is a plain text file in UTF-8. A word processor's file, another encoding or a hidden control "
                    + "character would be printed wrongly or not at all."),
    YAML_SYNTAX(
            "yaml-syntax",
            "The file must be YAML. The first mistake in its form ends the reading of that file, and nothing half-read "
                    + "is checked or printed."),
    ONE_A_FILE("one-a-file", "One file holds one drill, so that the file's name can be the drill's id."),
    KNOWN_KEY("known-key", "A key that is not known would be left out without a word."),
    KEY_ONCE("key-once", "Of a key that stands twice only one could be printed."),
    NEEDED_KEY("needed-key", "Without these keys there is nothing to teach from."),
    RIGHT_KIND("right-kind", "A list, a text, a number or a yes-or-no stands where another is wanted."),
    TEXT_LENGTH("text-length", "A text that is empty or far too long is a slip of the pen."),
    KNOWN_WORD("known-word", "A level, form, weapon or size that the school does not have."),
    LOST_TEXT(
            "lost-text",
            "YAML takes some text away without a word: all that stands after ' #', after '&' or after '!'. On a card "
                    + "the words would simply be missing."),
    OWN_ID(
            "own-id",
            "Two drills whose ids differ only by capitals, accents or ending would be one file on another computer.");

    private final String id;
    private final String why;

    ReadingRule(String id, String why) {
        this.id = id;
        this.why = why;
    }

    /** The id that findings carry. */
    public String id() {
        return id;
    }

    /** One or two sentences on why it is demanded. */
    public String why() {
        return why;
    }
}
