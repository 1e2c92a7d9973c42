/** What a card says, without its places, in the languages that the peers read. */
@NullMarked
package org.drillwright.print.bench.peers.card;

import org.jspecify.annotations.NullMarked;
