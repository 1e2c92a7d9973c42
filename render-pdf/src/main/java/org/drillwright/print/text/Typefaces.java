package org.drillwright.print.text;

import org.drillwright.print.frame.Face;

/** The cuts of one family. */
public interface Typefaces {

    Typeface of(Face face);
}
