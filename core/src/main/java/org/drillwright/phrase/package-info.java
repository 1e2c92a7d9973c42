/** The phrase: two fencers' state, the playing of actions, what is refused and why, and the replay of a whole drill. */
@NullMarked
package org.drillwright.phrase;

import org.jspecify.annotations.NullMarked;
