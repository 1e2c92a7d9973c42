/** Finds the school and the drills that a command is meant for; the options that say it. */
@NullMarked
package org.drillwright.print.command.folder;

import org.jspecify.annotations.NullMarked;
