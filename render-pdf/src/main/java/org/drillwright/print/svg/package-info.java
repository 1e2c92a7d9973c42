/** Frames as SVG for a screen: every run of text at its place, every part with its role. */
@NullMarked
package org.drillwright.print.svg;

import org.jspecify.annotations.NullMarked;
