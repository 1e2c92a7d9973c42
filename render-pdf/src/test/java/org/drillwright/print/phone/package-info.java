/** Tests of the page for a phone, as a file and in a real browser. */
package org.drillwright.print.phone;
