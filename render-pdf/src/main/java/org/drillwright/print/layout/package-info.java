/** Drills as cards, in the type of their size. Stands on the model, {@code frame} and {@code text}. */
@NullMarked
package org.drillwright.print.layout;

import org.jspecify.annotations.NullMarked;
