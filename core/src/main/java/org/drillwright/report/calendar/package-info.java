/** A published term as an iCalendar file. */
@NullMarked
package org.drillwright.report.calendar;

import org.jspecify.annotations.NullMarked;
