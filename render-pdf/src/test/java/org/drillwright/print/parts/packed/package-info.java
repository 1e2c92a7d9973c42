/** The runnable archive as it was packed; these tests run after packing. */
@NullMarked
package org.drillwright.print.parts.packed;

import org.jspecify.annotations.NullMarked;
