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
    private final List<BitSet> here = new ArrayList<>();

    /** The same for each place and all behind it. */
    private final List<BitSet> later = new ArrayList<>();

    /** For each place and category that ends there, the constructions that are worth beginning. */
    private final List<Map<String, List<Production>>> rules = new ArrayList<>();

    /** @param senses for each token the categories of the words that begin there */
    Lookahead(Grammar grammar, List<List<String>> senses) {
        this.grammar = grammar;
        for (List<String> categories : senses) {
            BitSet numbers = new BitSet();
            categories.forEach(category -> grammar.corners().addBeginningWith(category, numbers));
            here.add(numbers);
        }
        here.add(new BitSet());
        for (int at = senses.size(); at >= 0; at--) {
            BitSet numbers = (BitSet) here.get(at).clone();
            if (at < senses.size()) {
                numbers.or(later.get(0));
            }
            later.add(0, numbers);
        }
        for (int at = 0; at <= senses.size(); at++) {
            rules.add(new HashMap<>());
        }
    }

    /** The constructions that a phrase may begin, in their order. */
    List<Production> beginningWith(String category, int end) {
        return rules.get(end).computeIfAbsent(category, first -> {
            List<Production> worth = new ArrayList<>();
            BitSet next = here.get(end);
            for (Grammar.Beginning beginning : grammar.beginningWith(first)) {
                boolean near = beginning.second() < 0 || next.get(beginning.second());
                if (near && mayGoOn(beginning.rule(), 1, end)) {
                    worth.add(beginning.rule());
                }
            }
            return worth;
        });
    }

    /** Whether the parts that a construction still needs can follow here, as far as one sees. */
    boolean mayGoOn(Production rule, int done, int end) {
        List<Production.Child> children = rule.children();
        if (done < children.size() && !here.get(end).get(children.get(done).number())) {
            return false;
        }
        for (int at = done + 1; at < children.size(); at++) {
            int earliest = end + at - done;
            if (earliest >= later.size()
                    || !later.get(earliest).get(children.get(at).number())) {
                return false;
            }
        }
        return true;
    }
}
