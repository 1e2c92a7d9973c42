/** A drill, its steps and turns, a school, its levels and sets: plain values without places of text. Stands on nothing. */
@NullMarked
package org.drillwright.model;

import org.jspecify.annotations.NullMarked;
