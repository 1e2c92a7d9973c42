/** What an installed program needs besides itself: manual pages, completion for shells, a quick start. */
@NullMarked
package org.drillwright.print.command.install;

import org.jspecify.annotations.NullMarked;
