package org.drillwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;

/**
 * The places that an example marks: in a comment line of carets each run of carets stands under the words of the line
 * above; a remark may follow them.
 *
 * <pre>
 * distance: lange
 * #         ^^^^^
 * </pre>
 */
final class Marks {

    private static final Pattern MARK_LINE = Pattern.compile(" *# *\\^[ ^]*( .*)?");
    private static final Pattern CARETS = Pattern.compile("\\^+");

    private Marks() {}

    static List<Span> in(String text) {
        SourceFile file = new SourceFile("", text);
        List<Span> marks = new ArrayList<>();
        for (int number = 2; number <= file.lineCount(); number++) {
            String line = file.slice(file.line(number));
            if (MARK_LINE.matcher(line).matches()) {
                marks.addAll(under(line, file.line(number - 1)));
            }
        }
        return marks;
    }

    private static List<Span> under(String marks, Span above) {
        List<Span> spans = new ArrayList<>();
        Matcher carets = CARETS.matcher(marks);
        while (carets.find()) {
            spans.add(new Span(above.start() + carets.start(), above.start() + carets.end()));
        }
        return spans;
    }
}
