package org.drillwright.read;

/** What reading itself demands of a file, before any rule looks at the drill. */
public enum ReadingRule {
    NOT_PLAIN_TEXT(
            "not-plain-text",
            "A drill is a plain text file in UTF-8. A word processor's file, another encoding or a hidden control "
                    + "character would be printed wrongly or not at all."),
    BROKEN_YAML(
            "broken-yaml",
            "The file must be YAML. Reading stops at the first mistake in its form, and nothing half-read is"
                    + " checked or printed."),
    SEVERAL_IN_ONE_FILE(
            "several-in-one-file", "One file holds one drill, so that the file's name can be the drill's id."),
    UNKNOWN_KEY("unknown-key", "An unknown key would be dropped without a word."),
    KEY_TWICE("key-twice", "If a key is given twice, only one of them could be printed."),
    KEY_MISSING("key-missing", "Without these keys there is nothing to teach from."),
    WRONG_KIND("wrong-kind", "There is a list, a text, a number or a yes-or-no where something else is needed."),
    TEXT_EMPTY_OR_TOO_LONG("text-empty-or-too-long", "A text that is empty or far too long is a slip of the pen."),
    UNKNOWN_WORD("unknown-word", "A level, form, weapon or size that the school does not have."),
    LOST_TEXT(
            "lost-text",
            "YAML drops some text without a word: everything after ' #', after '&' or after '!'. On a card the"
                    + " words would simply be missing."),
    IDS_TOO_ALIKE(
            "ids-too-alike",
            "Two drills whose ids differ only in capitals, accents or file ending would be one file on another"
                    + " computer."),
    PLAN_SPOILT(
            "plan-spoilt",
            "A saved plan is what was printed and handed out. One that was edited by hand describes a class"
                    + " that nobody has a sheet for."),
    TRANSLATION_UNLIKE(
            "translation-unlike",
            "A turn's translation that is read otherwise than the turn would teach something that nobody has checked."),
    UNPRINTABLE(
            "unprintable",
            "Characters missing from the cards' typeface, and letters of scripts that cannot be set, are not printed. A card"
                    + " without them would say something else.");

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
