/** What lies before the author: the school as it was last read, and what each reading changed. */
@NullMarked
package org.drillwright.print.command.desk;

import org.jspecify.annotations.NullMarked;
