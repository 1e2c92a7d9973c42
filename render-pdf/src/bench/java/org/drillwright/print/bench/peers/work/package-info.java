/** Processes that do one thing over and over, so that it can be timed warm, or once, so that it can be timed cold. */
@NullMarked
package org.drillwright.print.bench.peers.work;

import org.jspecify.annotations.NullMarked;
