/** Helps an author inside his own text editor. */
@NullMarked
package org.drillwright.print.command.editor;

import org.jspecify.annotations.NullMarked;
