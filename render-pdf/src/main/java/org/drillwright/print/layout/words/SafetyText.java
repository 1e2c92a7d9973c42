package org.drillwright.print.layout.words;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;

/**
 * All words of the safety card.
 *
 * @param how to use it
 * @param risk that no card makes a drill safe
 */
public record SafetyText(Paragraph title, Paragraph how, List<Rule> rules, Paragraph risk, CardText.Foot foot) {

    public SafetyText {
        rules = List.copyOf(rules);
    }

    /**
     * One rule of conduct.
     *
     * @param whole both in one paragraph
     */
    public record Rule(Paragraph key, Paragraph said, Paragraph whole) {}

    /** @param school may be empty */
    public static SafetyText of(String school, Labels labels, Typefaces faces) {
        String line = Stream.of(school, labels.text(Label.SAFETY_CARD))
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining("\u00A0· "));
        return new SafetyText(
                Paragraph.of(faces, Face.BOLD, labels.text(Label.SAFETY_TITLE)),
                Paragraph.of(faces, Face.REGULAR, labels.text(Label.SAFETY_HOW)),
                List.of(
                        rule(Label.SAFETY_BEFORE, Label.SAFETY_BEFORE_SAID, labels, faces),
                        rule(Label.SAFETY_MASKS, Label.SAFETY_MASKS_SAID, labels, faces),
                        rule(Label.SAFETY_CALLS, Label.SAFETY_CALLS_SAID, labels, faces),
                        rule(Label.SAFETY_COUNTS, Label.SAFETY_COUNTS_SAID, labels, faces),
                        rule(Label.SAFETY_TOUCHES, Label.SAFETY_TOUCHES_SAID, labels, faces),
                        rule(Label.SAFETY_BLADE, Label.SAFETY_BLADE_SAID, labels, faces),
                        rule(Label.SAFETY_HALT, Label.SAFETY_HALT_SAID, labels, faces)),
                Paragraph.of(faces, Face.BOLD, labels.text(Label.SAFETY_RISK)),
                new CardText.Foot(
                        Paragraph.of(faces, Face.REGULAR, labels.text(Label.DEFERRAL)),
                        Paragraph.of(faces, Face.REGULAR, line),
                        Paragraph.of(faces, Face.BOLD, "")));
    }

    private static Rule rule(Label key, Label said, Labels labels, Typefaces faces) {
        Styled bold = new Styled(labels.text(key), Face.BOLD);
        Styled plain = new Styled(labels.text(said), Face.REGULAR);
        return new Rule(
                Paragraph.of(faces, List.of(bold)),
                Paragraph.of(faces, List.of(plain)),
                Paragraph.of(faces, List.of(bold, plain)));
    }
}
