/** What an author is told, offered and helped with at a place of a file, whatever editor asks; plain values. */
@NullMarked
package org.drillwright.editing;

import org.jspecify.annotations.NullMarked;
