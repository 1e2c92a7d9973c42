package org.drillwright.print.sheet;

import org.drillwright.print.page.Type;
import org.drillwright.print.text.Typefaces;

/** The sizes of type of sheets that are held in the hand, in points. */
record HandType(Typefaces faces) {

    Type heading() {
        return new Type(faces, 20);
    }

    Type time() {
        return new Type(faces, 16);
    }

    Type drill() {
        return new Type(faces, 13);
    }

    Type words() {
        return new Type(faces, 11.5);
    }

    Type notes() {
        return new Type(faces, 10);
    }

    Type foot() {
        return new Type(faces, 8.5);
    }
}
