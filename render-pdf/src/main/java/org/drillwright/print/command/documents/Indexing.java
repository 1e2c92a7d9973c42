package org.drillwright.print.command.documents;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.model.Turn;
import org.drillwright.print.booklet.Index;
import org.drillwright.reading.Glossary;
import org.drillwright.reading.GlossaryTerm;
import org.drillwright.reading.GlossaryTerms;
import org.drillwright.reading.TermKind;

/** Gathers the terms that drills say in their counts, each in the way in which it prints it. */
final class Indexing {

    /** What one looks up: things to do, positions, targets. Courtesy and measures stand on every card. */
    private static final Set<TermKind> LOOKED_UP = Set.of(
            TermKind.FOOTWORK, TermKind.ARM, TermKind.BLADE, TermKind.ANSWER, TermKind.POSITION, TermKind.TARGET);

    private Indexing() {}

    static Index of(List<Subject> drills, School school) {
        Map<String, Set<String>> fundamentals = new TreeMap<>();
        Map<String, Set<String>> printed = new TreeMap<>();
        Map<GlossaryTerm, List<Subject>> terms = new LinkedHashMap<>();
        for (Subject drill : drills) {
            drill.drill().worksOn().forEach(word -> put(fundamentals, word, drill));
            terms(drill).stream()
                    .filter(term -> LOOKED_UP.contains(term.kind()))
                    .forEach(term -> terms.computeIfAbsent(term, first -> new ArrayList<>())
                            .add(drill));
        }
        terms.forEach((term, some) -> {
            List<String> ways = ways(term, some.get(0).reader().glossary(), school.language());
            List<String> used =
                    PrintedWay.of(ways, some.stream().map(Indexing::printed).toList(), school.language());
            for (int at = 0; at < used.size(); at++) {
                put(printed, used.get(at), some.get(at));
            }
        });
        return new Index(fundamentals, printed);
    }

    private static void put(Map<String, Set<String>> words, String word, Subject drill) {
        words.computeIfAbsent(word, first -> new TreeSet<>()).add(drill.drill().id());
    }

    private static Set<GlossaryTerm> terms(Subject drill) {
        return turns(drill)
                .flatMap(turn -> GlossaryTerms.of(drill.reader().read(turn.read())).stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static String printed(Subject drill) {
        return turns(drill).map(Turn::say).collect(Collectors.joining("\n"));
    }

    private static Stream<Turn> turns(Subject drill) {
        return drill.drill().steps().stream()
                .flatMap(step -> Stream.of(Side.values()).flatMap(side -> step.turn(side).stream()));
    }

    /** How a term is said, in the school's language first. */
    private static List<String> ways(GlossaryTerm term, Glossary glossary, Language language) {
        return glossary.item(term).stream()
                .flatMap(item -> Stream.concat(
                        item.in(language.word()).stream(),
                        item.words().values().stream().flatMap(List::stream)))
                .distinct()
                .toList();
    }
}
