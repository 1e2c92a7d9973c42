package org.drillwright.print.command.packet;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.model.Turn;
import org.drillwright.print.booklet.Index;
import org.drillwright.reading.Glossary;
import org.drillwright.reading.Term;
import org.drillwright.reading.TermKind;
import org.drillwright.reading.Terms;

/** Gathers the terms that drills say in their counts, each under the first way in which the school's language says it. */
final class Indexing {

    /** What one looks up: things to do, positions, targets. Courtesy and measures stand on every card. */
    private static final Set<TermKind> LOOKED_UP = Set.of(
            TermKind.FOOTWORK, TermKind.ARM, TermKind.BLADE, TermKind.ANSWER, TermKind.POSITION, TermKind.TARGET);

    private Indexing() {}

    static Index of(List<Subject> drills, School school) {
        Map<String, Set<String>> fundamentals = new TreeMap<>();
        Map<String, Set<String>> terms = new TreeMap<>();
        if (!drills.isEmpty()) {
            Map<Term, String> heads = heads(drills.get(0).reader().glossary(), school.language());
            for (Subject drill : drills) {
                String id = drill.drill().id();
                drill.drill().worksOn().forEach(word -> put(fundamentals, word, id));
                terms(drill).forEach(term -> {
                    String head = heads.get(term);
                    if (head != null && LOOKED_UP.contains(term.kind())) {
                        put(terms, head, id);
                    }
                });
            }
        }
        return new Index(fundamentals, terms);
    }

    private static void put(Map<String, Set<String>> words, String word, String id) {
        words.computeIfAbsent(word, first -> new TreeSet<>()).add(id);
    }

    private static Set<Term> terms(Subject drill) {
        Set<Term> terms = new LinkedHashSet<>();
        drill.drill().steps().forEach(step -> {
            for (Side side : Side.values()) {
                step.turn(side)
                        .map(Turn::read)
                        .ifPresent(words -> terms.addAll(Terms.of(drill.reader().read(words))));
            }
        });
        return terms;
    }

    private static Map<Term, String> heads(Glossary glossary, Language language) {
        Map<Term, String> heads = new HashMap<>();
        for (Glossary.Item item : glossary.items()) {
            Stream.of(language.word(), "en")
                    .flatMap(tag -> item.in(tag).stream())
                    .findFirst()
                    .ifPresent(word -> heads.put(item.term(), word));
        }
        return heads;
    }
}
