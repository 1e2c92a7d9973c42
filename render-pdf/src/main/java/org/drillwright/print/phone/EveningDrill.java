package org.drillwright.print.phone;

/**
 * What a drill of an evening is called.
 *
 * @param tag of the language of its title (BCP 47)
 */
public record EveningDrill(String title, String tag) {}
