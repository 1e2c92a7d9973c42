/** A published term as an iCalendar file. */
@NullMarked
package org.drillwright.tell.calendar;

import org.jspecify.annotations.NullMarked;
