/** The program compared with general tools that do a part of the same; see docs/peers.md. */
@NullMarked
package org.drillwright.print.bench.peers;

import org.jspecify.annotations.NullMarked;
