/** One layout for drill files, which keeps every remark and the author's words. */
@NullMarked
package org.drillwright.formatter;

import org.jspecify.annotations.NullMarked;
