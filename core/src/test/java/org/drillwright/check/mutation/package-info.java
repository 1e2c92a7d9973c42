/** Drills spoilt in stated ways, to see that each way is noticed where it was done. */
package org.drillwright.check.mutation;
