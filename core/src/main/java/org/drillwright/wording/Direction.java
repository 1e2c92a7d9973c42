package org.drillwright.wording;

import java.util.Arrays;
import java.util.Locale;

/** Which way a language is read. */
public enum Direction {
    LEFT_TO_RIGHT("ltr"),
    RIGHT_TO_LEFT("rtl");

    private final String word;

    Direction(String word) {
        this.word = word;
    }

    /**
     * As the language's own words have it; as English is read where there are none.
     *
     * @throws IllegalStateException if they name no direction
     */
    public static Direction of(Locale language) {
        String wanted = Bundle.in(Message.class, language).wanted("direction");
        return Arrays.stream(values())
                .filter(direction -> direction.word.equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no direction " + wanted));
    }

    public boolean isRightToLeft() {
        return this == RIGHT_TO_LEFT;
    }

    /** As HTML's {@code dir} has it. */
    public String word() {
        return word;
    }
}
