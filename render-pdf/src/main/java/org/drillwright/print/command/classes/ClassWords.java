package org.drillwright.print.command.classes;

/** What the help of several commands says alike. */
final class ClassWords {

    static final String CLASS =
            "A class: the name of a file in the school's folder 'classes', without its ending; or a path.";
    static final String SHEET = "The paper of the PDF: a4, a3, letter or legal. Normally as set in school.yaml, or a4.";
    static final String INITIALS =
            "The PDF shows initials instead of names. A school can set this for everything in school.yaml"
                    + " (initials: yes).";

    static final String PLAN =
            "The plan to start from, by the mark at the foot of its sheet. Normally the one" + " printed last.";

    private ClassWords() {}
}
