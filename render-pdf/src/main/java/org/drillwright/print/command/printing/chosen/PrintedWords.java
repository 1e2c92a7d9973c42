package org.drillwright.print.command.printing.chosen;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Written;

/** The words behind a printed field's name, such as {@code step 3, leader}, with their places in the file. */
final class PrintedWords {

    private static final Pattern IN_STEP = Pattern.compile("step (\\d+), (\\w+)");

    private PrintedWords() {}

    static List<Written> of(Subject drill, String field) {
        return paths(drill, field)
                .map(drill::words)
                .filter(words -> !words.text().isEmpty())
                .toList();
    }

    private static Stream<FieldPath> paths(Subject drill, String field) {
        Matcher inStep = IN_STEP.matcher(field);
        if (inStep.matches()) {
            int step = Integer.parseInt(inStep.group(1)) - 1;
            FieldPath path = Subject.stepPath(step).key(inStep.group(2));
            return Stream.of(path.key("say"), path);
        }
        FieldPath path = FieldPath.of(field);
        int items =
                Math.max(drill.drill().gear().size(), drill.drill().cautions().size());
        return Stream.concat(Stream.of(path), IntStream.range(0, items).mapToObj(path::item));
    }
}
