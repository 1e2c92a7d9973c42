/** Sheets of a planned class: partners for the wall, the lesson, the hall, progress, a session for two. */
@NullMarked
package org.drillwright.print.sheet;

import org.jspecify.annotations.NullMarked;
