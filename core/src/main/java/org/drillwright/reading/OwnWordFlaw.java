package org.drillwright.reading;

/** Why an entry among a school's own words does not work. */
public enum OwnWordFlaw {
    /** No word stands on one of its sides. */
    EMPTY,
    /** What it means holds a word that no language lists, or words of two languages. */
    MEANING_UNKNOWN,
    /** It is read so without the entry. */
    NO_CHANGE,
    /** It is a word for how a thing is done, in every turn where it stands: to give it a meaning would change them all. */
    MANNER
}
