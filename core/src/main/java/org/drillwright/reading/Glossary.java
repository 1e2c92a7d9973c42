package org.drillwright.reading;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.drillwright.lexicon.LexicalEntry;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Target;
import org.drillwright.notation.Utterance;

/** The words of the trade as people look them up: by kind, each term with its words in each language. */
public final class Glossary {

    /** Kinds of word that name a term by a feature of theirs. */
    private static final Map<String, String> NAMED =
            Map.of("POS", "pos", "T", "t", "TD", "t", "MARK", "t", "MEAS", "meas", "MEASX", "meas");

    private static final Set<String> DONE = Set.of("V", "ACTN", "GUARDN");

    private final Map<GlossaryTerm, Map<String, Set<String>>> words =
            new TreeMap<>(Comparator.comparing(GlossaryTerm::kind).thenComparing(GlossaryTerm::id));

    /**
     * A term and how it is said.
     *
     * @param words by the tag of the language, each without its endings, in the order of the list
     */
    public record Item(GlossaryTerm term, Map<String, List<String>> words) {

        public Item {
            words = new LinkedHashMap<>(words);
        }

        /** Its words in one language. */
        public List<String> in(String tag) {
            return words.getOrDefault(tag, List.of());
        }
    }

    Glossary(TurnReader reader) {
        reader.tongues()
                .forEach(tongue -> tongue.lexicon()
                        .forms()
                        .forEach((entry, forms) -> term(
                                        reader,
                                        tongue,
                                        entry,
                                        forms.values().iterator().next())
                                .ifPresent(term -> words.computeIfAbsent(term, key -> new TreeMap<>())
                                        .computeIfAbsent(tongue.tag(), key -> new LinkedHashSet<>())
                                        .add(entry.lemma()))));
    }

    private static Optional<GlossaryTerm> term(
            TurnReader reader, LanguageTables tongue, LexicalEntry entry, String form) {
        String feature = NAMED.get(entry.category());
        if (feature != null) {
            return entry.features().get(feature).map(value -> named(feature, value));
        }
        if (!DONE.contains(entry.category())) {
            return Optional.empty();
        }
        Utterance alone = reader.read(form, tongue);
        List<Action> actions = alone.clauses().stream().map(Clause::action).toList();
        if (!alone.isRead() || actions.size() != 1) {
            return Optional.empty();
        }
        List<GlossaryTerm> terms = GlossaryTerms.of(actions.get(0));
        return terms.size() == 1 ? Optional.of(terms.get(0)) : Optional.empty();
    }

    private static GlossaryTerm named(String feature, String value) {
        return switch (feature) {
            case "pos" -> new GlossaryTerm(TermKind.POSITION, value);
            case "t" ->
                GlossaryTerms.of(Target.valueOf(value.toUpperCase(Locale.ROOT).replace('-', '_')));
            default -> new GlossaryTerm(TermKind.MEASURE, value.replace("-distance", ""));
        };
    }

    /** All terms, by kind. */
    public List<Item> items() {
        return words.entrySet().stream()
                .map(entry -> item(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static Item item(GlossaryTerm term, Map<String, Set<String>> words) {
        Map<String, List<String>> sorted = new LinkedHashMap<>();
        words.forEach((tag, some) -> sorted.put(tag, List.copyOf(some)));
        return new Item(term, sorted);
    }

    /** A term by its kind and name. */
    public Optional<Item> item(GlossaryTerm term) {
        return Optional.ofNullable(words.get(term)).map(found -> item(term, found));
    }
}
