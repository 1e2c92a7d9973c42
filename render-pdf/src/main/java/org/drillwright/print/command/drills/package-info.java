/** The commands that read drills: check, explain, tidy, and begin a new one. */
@NullMarked
package org.drillwright.print.command.drills;

import org.jspecify.annotations.NullMarked;
