/** What was played in a count, drawn as a small picture that says in words what it shows. Stands on core and {@code frame}. */
@NullMarked
package org.drillwright.print.diagram;

import org.jspecify.annotations.NullMarked;
