/** What was printed: which cards on the ring are stale. */
@NullMarked
package org.drillwright.print.command.prints;

import org.jspecify.annotations.NullMarked;
