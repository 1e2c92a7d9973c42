package org.drillwright.notation;

/** Above or below the hand of the one attacked. */
public enum Height {
    HIGH,
    LOW;

    public Height other() {
        return this == HIGH ? LOW : HIGH;
    }
}
