/** The texts of a card, in the language of the card: what is to be set, before anybody asks where. */
@NullMarked
package org.drillwright.print.layout.words;

import org.jspecify.annotations.NullMarked;
