/** Tables as spreadsheets write them: their bytes, separators, headings and dates. */
@NullMarked
package org.drillwright.table;

import org.jspecify.annotations.NullMarked;
