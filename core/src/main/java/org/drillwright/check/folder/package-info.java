/** Rules: what only the whole folder shows. */
@NullMarked
package org.drillwright.check.folder;

import org.jspecify.annotations.NullMarked;
