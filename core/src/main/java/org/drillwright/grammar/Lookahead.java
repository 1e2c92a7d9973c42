package org.drillwright.grammar;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What may still come in a sentence: at each token, what its words can be the beginning of. A construction is only begun
 * where each of its further parts can begin; most cannot, and would be carried along for nothing.
 */
final class Lookahead {

    private final Grammar grammar;

    /** For each place, behind the last token too, the numbers of the categories that may begin there. */
    private final BitSet[] here;

    /** The same for each place and all behind it. */
    private final BitSet[] later;

    /** For each place and category that ends there, the constructions that are worth beginning, by the concept that they ask for. */
    private final List<Map<String, Map<String, List<Production>>>> rules = new ArrayList<>();

    /** @param senses for each token the categories of the words that begin there */
    Lookahead(Grammar grammar, List<List<String>> senses) {
        this.grammar = grammar;
        this.here = new BitSet[senses.size() + 1];
        this.later = new BitSet[here.length];
        for (int at = senses.size(); at >= 0; at--) {
            BitSet numbers = new BitSet();
            if (at < senses.size()) {
                senses.get(at).forEach(category -> grammar.corners().addBeginningWith(category, numbers));
            }
            here[at] = numbers;
            later[at] = (BitSet) numbers.clone();
            if (at < senses.size()) {
                later[at].or(later[at + 1]);
            }
        }
        for (int at = 0; at <= senses.size(); at++) {
            rules.add(new HashMap<>());
        }
    }

    /** The constructions that a phrase may begin, as far as its category and its concept tell, in their order. */
    List<Production> beginningWith(Phrase<?> phrase, int end) {
        Map<String, List<Production>> byConcept =
                rules.get(end).computeIfAbsent(phrase.category(), first -> new HashMap<>());
        return byConcept.computeIfAbsent(
                phrase.features().get("c").orElse(""), concept -> worth(phrase.category(), concept, end));
    }

    private List<Production> worth(String first, String concept, int end) {
        List<Production> worth = new ArrayList<>();
        Beginnings all = grammar.beginningWith(first, concept);
        BitSet next = here[end];
        for (int at = 0; at < all.size(); at++) {
            boolean near = all.second(at) < 0 || next.get(all.second(at));
            if (near && mayGoOn(all.rule(at), 1, end)) {
                worth.add(all.rule(at));
            }
        }
        return worth;
    }

    /** Whether the parts that a construction still needs can follow here, as far as one sees. */
    boolean mayGoOn(Production rule, int done, int end) {
        int size = rule.size();
        if (done < size && !here[end].get(rule.child(done).number())) {
            return false;
        }
        for (int at = done + 1; at < size; at++) {
            int earliest = end + at - done;
            if (earliest >= later.length || !later[earliest].get(rule.child(at).number())) {
                return false;
            }
        }
        return true;
    }
}
