/** The school as it was last read, and what each reading changed. */
@NullMarked
package org.drillwright.print.command.live;

import org.jspecify.annotations.NullMarked;
