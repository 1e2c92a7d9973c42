package org.drillwright.notation;

/** Of whom a text tells, by the words for persons in it. */
public enum Telling {
    /** Of the one who speaks: 'I parry quarte'. */
    FIRST_PERSON,

    /** Of the one whose turn it is, by name: 'the pupil parries quarte'. */
    BY_NAME,

    /** Only of somebody else: 'my partner lunges', 'he lunges'. */
    OF_ANOTHER,

    /** It names nobody, or 'you': an order may be given by either. */
    UNSAID
}
