/** Smooth outlines on paper: curves through dots, tubes, hulls; knows nobody who is drawn. Stands on {@code frame}. */
@NullMarked
package org.drillwright.print.diagram.curve;

import org.jspecify.annotations.NullMarked;
