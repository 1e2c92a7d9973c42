/** What was done in past classes, an append-only file: its lines read with findings, its new lines written. */
@NullMarked
package org.drillwright.register;

import org.jspecify.annotations.NullMarked;
