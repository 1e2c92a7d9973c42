/** Drills as cards, in type as large as fits. Stands on the model, {@code frame} and {@code text}. */
@NullMarked
package org.drillwright.print.layout;

import org.jspecify.annotations.NullMarked;
