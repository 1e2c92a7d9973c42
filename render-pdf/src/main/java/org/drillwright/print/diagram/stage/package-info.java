/** What stands round the figures: the floor, the signs, the view of the one attacked, and how all of it shares a box. Stands on {@code pose}, {@code figure}, {@code curve} and {@code frame}. */
@NullMarked
package org.drillwright.print.diagram.stage;

import org.jspecify.annotations.NullMarked;
