package org.drillwright.print.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.NotBlank;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.drillwright.print.frame.Face;
import org.drillwright.print.pdf.Family;

class ParagraphProperties {

    @Property(tries = 300)
    void every_line_fits_and_every_letter_stays(
            @ForAll @Size(min = 1, max = 25)
                    List<@NotBlank @StringLength(max = 30) @CharRange(from = 'a', to = 'z') String> words,
            @ForAll @DoubleRange(min = 3, max = 40) double measure) {
        Paragraph paragraph = Paragraph.of(Family.dejaVu(), Face.REGULAR, String.join(" ", words));
        List<TextLine> lines = paragraph.lines(measure);
        lines.forEach(line -> assertTrue(line.width() <= measure + 1e-6, line + " is wider than " + measure));
        String letters = lines.stream().map(TextLine::text).collect(Collectors.joining());
        assertEquals(String.join("", words), letters.replaceAll("[ \u00AD]", ""));
    }
}
