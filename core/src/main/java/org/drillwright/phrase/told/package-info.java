/** What turns and a start tell, before anything of it is played: clauses, moves, and how far a start says how they stand. */
@NullMarked
package org.drillwright.phrase.told;

import org.jspecify.annotations.NullMarked;
