/** The whole school as a book: contents, a map of needs, a page for each drill, what they work, an index. */
@NullMarked
package org.drillwright.print.booklet;

import org.jspecify.annotations.NullMarked;
