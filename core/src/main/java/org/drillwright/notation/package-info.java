/** From words to actions: the vocabulary of the trade, kept as data, and the reader of turns. */
@NullMarked
package org.drillwright.notation;

import org.jspecify.annotations.NullMarked;
