/** Whole documents made of drills: a handout, a booklet, a page for a phone. */
@NullMarked
package org.drillwright.print.command.documents;

import org.jspecify.annotations.NullMarked;
