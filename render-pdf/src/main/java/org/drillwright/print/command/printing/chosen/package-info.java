/** Which drills are to be printed, whether they may be, and which letters they need. */
@NullMarked
package org.drillwright.print.command.printing.chosen;

import org.jspecify.annotations.NullMarked;
