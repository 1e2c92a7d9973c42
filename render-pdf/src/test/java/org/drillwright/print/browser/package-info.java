/** A real browser for tests of pages, and what judges a page in it. */
package org.drillwright.print.browser;
