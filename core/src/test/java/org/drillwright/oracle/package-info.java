/** What two foil fencers can do, counted from the handbooks' tables alone: it knows nothing of the program. */
package org.drillwright.oracle;
