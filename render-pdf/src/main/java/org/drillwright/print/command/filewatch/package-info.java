/** Notices that a file of a folder was saved. */
@NullMarked
package org.drillwright.print.command.filewatch;

import org.jspecify.annotations.NullMarked;
