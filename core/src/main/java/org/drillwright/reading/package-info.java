/** From a text to its actions: every word is part of one, harmless by a closed list, about something else, or unread. */
@NullMarked
package org.drillwright.reading;

import org.jspecify.annotations.NullMarked;
