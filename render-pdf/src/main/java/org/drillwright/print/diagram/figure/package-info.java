/** A fencer on paper: parts of a body as outlines, welded to one figure in black or white. Stands on {@code pose.body}, {@code curve} and {@code frame}. */
@NullMarked
package org.drillwright.print.diagram.figure;

import org.jspecify.annotations.NullMarked;
