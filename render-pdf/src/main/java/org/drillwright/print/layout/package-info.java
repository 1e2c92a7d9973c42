/** Drills as cards, in the type of their size. Stands on the model and {@code page}. */
@NullMarked
package org.drillwright.print.layout;

import org.jspecify.annotations.NullMarked;
