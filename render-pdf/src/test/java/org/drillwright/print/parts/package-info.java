/** What the program is made of: the bill of materials, and the table of dependencies. */
@NullMarked
package org.drillwright.print.parts;

import org.jspecify.annotations.NullMarked;
