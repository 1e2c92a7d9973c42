/** How fast cards are laid and written, each measurement a process of its own. */
@NullMarked
package org.drillwright.print.bench;

import org.jspecify.annotations.NullMarked;
