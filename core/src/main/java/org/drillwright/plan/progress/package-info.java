/** What each person may learn next. */
@NullMarked
package org.drillwright.plan.progress;

import org.jspecify.annotations.NullMarked;
