package org.drillwright.print.command.packet;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.drillwright.check.Subject;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.model.Turn;
import org.drillwright.notation.Glossary;
import org.drillwright.notation.Term;
import org.drillwright.notation.TermKind;
import org.drillwright.notation.Tongue;
import org.drillwright.notation.Vocabulary;
import org.drillwright.print.booklet.Index;

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
            Map<Term, String> heads = heads(drills.get(0).vocabulary(), school.language());
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
                        .ifPresent(words -> terms.addAll(drill.vocabulary().terms(words)));
            }
        });
        return terms;
    }

    private static Map<Term, String> heads(Vocabulary vocabulary, Language language) {
        Map<Term, String> heads = new HashMap<>();
        for (Glossary.Entry entry : Glossary.entries(vocabulary)) {
            for (Tongue tongue : Tongue.values()) {
                if (tongue.tag().equals(language.word()) || tongue == Tongue.ENGLISH) {
                    entry.in(tongue).stream().findFirst().ifPresent(form -> {
                        if (tongue.tag().equals(language.word())) {
                            heads.put(entry.term(), form);
                        } else {
                            heads.putIfAbsent(entry.term(), form);
                        }
                    });
                }
            }
        }
        return heads;
    }
}
