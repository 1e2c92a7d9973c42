/** A drill said in another language: its actions by the grammar, its free words as the school has translated them. */
@NullMarked
package org.drillwright.translation;

import org.jspecify.annotations.NullMarked;
