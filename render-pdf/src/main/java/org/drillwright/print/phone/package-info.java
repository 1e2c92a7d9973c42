/** A set, or a class's evening, as one page for a phone: everything in one file, nothing from elsewhere, readable with and without its script. */
@NullMarked
package org.drillwright.print.phone;

import org.jspecify.annotations.NullMarked;
