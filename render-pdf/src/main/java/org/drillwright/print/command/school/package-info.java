/** The commands that show what a school has set, its words, and the schema of its files. */
@NullMarked
package org.drillwright.print.command.school;

import org.jspecify.annotations.NullMarked;
