/** The record of what was printed: which cards on the ring are stale. */
@NullMarked
package org.drillwright.print.command.record;

import org.jspecify.annotations.NullMarked;
