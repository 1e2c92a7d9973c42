/** Sheets of a planned class: partners round by round, the lesson, the hall, progress, a session for two. */
@NullMarked
package org.drillwright.print.sheet;

import org.jspecify.annotations.NullMarked;
