package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.jury.Rules;
import org.drillwright.phrase.Refusal;
import org.junit.jupiter.api.Test;

/**
 * Each word of each start is written as one that nobody knows. No count is refused anything for it that was right before, and
 * a fault that is no longer seen stands in a count that is said not to be judged; of feet it is only told where they became
 * unknown. Handling of words; no fact of the trade.
 */
class StartInDoubtTest {

    private static final Pattern START = Pattern.compile("(?m)^start: (.*)$");
    private static final Pattern WORD = Pattern.compile("\\p{L}+");

    /** What is refused in a count. */
    private record Refused(String where, String kind) {}

    @Test
    void a_word_that_is_not_read_adds_no_fault_and_clears_none() {
        List<String> wrong = new ArrayList<>();
        int tried = 0;
        int judged = 0;
        for (Subject subject : subjects().toList()) {
            String text = subject.file().text();
            Matcher start = START.matcher(text);
            if (!start.find()) {
                continue;
            }
            Set<Refused> before = refused(subject);
            Matcher word = WORD.matcher(start.group(1));
            while (word.find()) {
                String other = text.substring(0, start.start(1) + word.start()) + "gorbly"
                        + text.substring(start.start(1) + word.end());
                Subject less = Judged.drill(other).subject();
                Set<Refused> now = refused(less);
                Set<String> open = less.coverage().gaps().stream()
                        .map(gap -> "count " + (gap.step() + 1))
                        .collect(Collectors.toSet());
                tried++;
                judged += open.size() < less.drill().steps().size() ? 1 : 0;
                now.stream()
                        .filter(one ->
                                before.stream().noneMatch(known -> known.where().equals(one.where())))
                        .forEach(one -> wrong.add("added " + one + " " + word.group() + " in " + start.group(1)));
                before.stream()
                        .filter(one -> !one.kind().equals("NothingToRecover"))
                        .filter(one -> !now.contains(one) && !open.contains(one.where()))
                        .forEach(one -> wrong.add("cleared " + one + " " + word.group() + " in " + start.group(1)));
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(tried > 1000, "words tried: " + tried);
        assertTrue(judged * 2 > tried, "of " + tried + " drills some counts are judged of " + judged);
    }

    private static Stream<Subject> subjects() {
        Stream<String> faulty = Stream.concat(
                Rules.ALL.stream().map(rule -> Example.complete(rule.text().breaks())),
                Worked.all().stream().map(phrase -> phrase.drill(phrase.wrong())));
        Stream<String> right = Corpus.handbook().samples().stream()
                .map(sample -> sample.subject().file().text());
        return Stream.concat(faulty, right).map(text -> Judged.drill(text).subject());
    }

    /** But for what only a warning is given of. */
    private static Set<Refused> refused(Subject subject) {
        Set<Refused> refused = new HashSet<>();
        for (Fault fault : subject.faults()) {
            if (!(fault.refusal() instanceof Refusal.FromTheOtherSide)) {
                refused.add(new Refused(
                        fault.where().english(), fault.refusal().getClass().getSimpleName()));
            }
        }
        return refused;
    }
}
