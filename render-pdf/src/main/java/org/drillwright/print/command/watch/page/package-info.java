/** What the page asks for: itself, the school, a drill, its cards and pictures, the words. */
@NullMarked
package org.drillwright.print.command.watch.page;

import org.jspecify.annotations.NullMarked;
