package org.drillwright.model;

/**
 * A school's own typeface, as TrueType files in its folder.
 *
 * @param regular the file for most words
 * @param bold the file for titles and numerals; the same file where there is no other
 */
public record SchoolFont(String regular, String bold) {}
