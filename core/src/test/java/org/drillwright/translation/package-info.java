/** Drills said in other languages. */
package org.drillwright.translation;
