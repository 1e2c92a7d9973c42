/** Pages before they are pages: sizes and positioned marks that carry their meaning. Stands on nothing. */
@NullMarked
package org.drillwright.print.frame;

import org.jspecify.annotations.NullMarked;
