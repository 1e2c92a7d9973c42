package org.drillwright.print.layout;

import java.util.Locale;

/** A word of the card itself, not of the drill. Its key in the files of labels is its name in lower case with dots. */
public enum Label {
    COUNT,
    LEADER,
    FOLLOWER,
    CALLER,
    CLASS,
    DISTANCE,
    SAFETY,
    CALL,
    GEAR,
    OPENING,
    START,
    CLOSING,
    CAUTION,
    WEAPON_FOIL,
    WEAPON_EPEE,
    WEAPON_SABRE,
    WEAPON_NONE,
    FORM_PARTNER,
    FORM_SOLO,
    REPEAT,
    REPEAT_SWAP,
    SWAP,
    ONE_OF,
    REVISED,
    MARK,
    DRAFT,
    DEFERRAL,
    UNCHECKED_COUNT,
    UNCHECKED_COUNTS,
    TRUE_SIZE,
    PURPOSE,
    NOTE,
    SAFETY_TITLE,
    SAFETY_RISK,
    SAFETY_BEFORE,
    SAFETY_SALUTE,
    SAFETY_MASK,
    SAFETY_SILENCE,
    SAFETY_COUNT,
    SAFETY_FORCE,
    SAFETY_BLADE,
    SAFETY_STOP,
    LEGEND_TITLE,
    MEASURE_FRONT,
    MEASURE_BACK;

    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '.');
    }
}
