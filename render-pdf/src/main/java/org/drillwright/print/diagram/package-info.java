/**
 * What was played in a count, drawn as a small picture and said in words. {@code curve} holds outlines, {@code figure} a
 * fencer, {@code stage} the two with floor, signs and inset. Stands on core, {@code pose} and {@code frame}.
 */
@NullMarked
package org.drillwright.print.diagram;

import org.jspecify.annotations.NullMarked;
