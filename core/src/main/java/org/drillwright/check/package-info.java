/** The rules, one class each in a room per theme, and what they look at. */
@NullMarked
package org.drillwright.check;

import org.jspecify.annotations.NullMarked;
