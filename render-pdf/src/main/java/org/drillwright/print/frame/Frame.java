package org.drillwright.print.frame;

import java.util.List;

/**
 * One page, card or picture. Lengths are points (1/72 inch); the origin is the top left corner and y grows downwards.
 *
 * @param clear how wide an edge all round holds no mark, in points
 * @param backdrop marks without meaning of their own, drawn first: rules, bands, signs that words repeat
 * @param content what is to be read, in reading order
 */
public record Frame(double width, double height, double clear, List<Mark> backdrop, List<Node> content) {

    public Frame {
        backdrop = List.copyOf(backdrop);
        content = List.copyOf(content);
    }
}
