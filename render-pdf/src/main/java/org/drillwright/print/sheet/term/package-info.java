/** A term on one sheet: drills down, classes across. */
@NullMarked
package org.drillwright.print.sheet.term;

import org.jspecify.annotations.NullMarked;
