/** A school's folder on a local page that follows each save. */
@NullMarked
package org.drillwright.print.command.watch;

import org.jspecify.annotations.NullMarked;
