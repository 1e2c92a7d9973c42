/** The commands that plan classes. */
@NullMarked
package org.drillwright.print.command.classes;

import org.jspecify.annotations.NullMarked;
