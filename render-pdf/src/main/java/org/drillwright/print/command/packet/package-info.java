/** From laid cards to a packet or a booklet: one document with pages around the cards. */
@NullMarked
package org.drillwright.print.command.packet;

import org.jspecify.annotations.NullMarked;
