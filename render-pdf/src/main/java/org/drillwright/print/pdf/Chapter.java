package org.drillwright.print.pdf;

/**
 * Cards that a bookmark gathers, such as those of one set.
 *
 * @param title of the bookmark; blank if the drills' bookmarks stand by themselves
 * @param cards how many, counted in front
 */
public record Chapter(String title, int cards) {}
