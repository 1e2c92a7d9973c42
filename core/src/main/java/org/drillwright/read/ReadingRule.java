package org.drillwright.read;

import org.drillwright.wording.Message;

/** What reading itself demands of a file, before any rule looks at the drill. */
public enum ReadingRule {
    NOT_PLAIN_TEXT("not-plain-text", "not-plain-text.why"),
    BROKEN_YAML("broken-yaml", "broken-yaml.why"),
    SEVERAL_IN_ONE_FILE("several-in-one-file"),
    UNKNOWN_KEY("unknown-key"),
    KEY_TWICE("key-twice"),
    KEY_MISSING("key-missing"),
    WRONG_KIND("wrong-kind"),
    TEXT_EMPTY_OR_TOO_LONG("text-empty-or-too-long"),
    UNKNOWN_WORD("unknown-word"),
    LOST_TEXT("lost-text", "lost-text.why"),
    IDS_TOO_ALIKE("ids-too-alike"),
    PLAN_SPOILT("plan-spoilt", "plan-spoilt.why"),
    TRANSLATION_UNLIKE("translation-unlike"),
    UNPRINTABLE("unprintable", "unprintable.why");

    private final String id;
    private final String why;

    ReadingRule(String id) {
        this(id, "");
    }

    /** @param why key of the words; empty if there are none */
    ReadingRule(String id, String why) {
        this.id = id;
        this.why = why;
    }

    /** The id that findings carry. */
    public String id() {
        return id;
    }

    /** One sentence: what is demanded, or what would happen otherwise. */
    public Message asks() {
        return Message.of(ReadingRule.class, id + ".asks");
    }

    /** One sentence more on why it is demanded; may be empty. */
    public Message why() {
        return why.isEmpty() ? Message.none() : Message.of(ReadingRule.class, why);
    }
}
