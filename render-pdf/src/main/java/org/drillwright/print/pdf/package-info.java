/** Frames as tagged PDF, and the typefaces; the only user of PDFBox. Stands on {@code frame} and {@code text}. */
@NullMarked
package org.drillwright.print.pdf;

import org.jspecify.annotations.NullMarked;
