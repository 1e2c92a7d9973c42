/** The short mark of what a card says, and the record of what was printed. */
@NullMarked
package org.drillwright.mark;

import org.jspecify.annotations.NullMarked;
