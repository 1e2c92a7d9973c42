package org.drillwright.print.command.classes;

import org.drillwright.plan.roster.Movement;

/** How often a class forms two lines. */
public enum WalkForm {
    ONE(Movement.ONE),
    TWO(Movement.TWO),
    FREE(Movement.FREE);

    private final Movement movement;

    WalkForm(Movement movement) {
        this.movement = movement;
    }

    Movement movement() {
        return movement;
    }

    public String word() {
        return movement.word();
    }
}
