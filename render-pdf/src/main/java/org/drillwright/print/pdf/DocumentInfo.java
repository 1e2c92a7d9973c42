package org.drillwright.print.pdf;

import java.util.Locale;

/**
 * What a document says of itself.
 *
 * @param title shown in the window's bar
 * @param language of the words, for whoever reads them aloud
 */
public record DocumentInfo(String title, Locale language) {}
