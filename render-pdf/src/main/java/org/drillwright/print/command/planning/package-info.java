/** Opens a class by its name, plans it, and puts its sheets into files. */
@NullMarked
package org.drillwright.print.command.planning;

import org.jspecify.annotations.NullMarked;
