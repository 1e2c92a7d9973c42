/** New drill files, and how files are put in place. */
@NullMarked
package org.drillwright.print.command.write;

import org.jspecify.annotations.NullMarked;
