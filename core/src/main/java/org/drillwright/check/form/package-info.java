/** Rules: how a drill is put together. */
@NullMarked
package org.drillwright.check.form;

import org.jspecify.annotations.NullMarked;
