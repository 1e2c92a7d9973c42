package org.drillwright.notation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The vocabulary as people look words up in it: by kind, each term with its forms in each language. */
public final class Glossary {

    /**
     * A term and how it is said.
     *
     * @param forms by language, as the vocabulary lists them, without the endings that are made from them
     */
    public record Entry(Term term, Map<Tongue, List<String>> forms) {

        public Entry {
            forms = Map.copyOf(forms);
        }

        /** The forms of one language. */
        public List<String> in(Tongue tongue) {
            return forms.getOrDefault(tongue, List.of());
        }
    }

    private Glossary() {}

    /** All terms of the trade in the vocabulary's order. */
    public static List<Entry> entries(Vocabulary vocabulary) {
        Map<Term, Map<Tongue, List<String>>> forms = new LinkedHashMap<>();
        for (Form form : vocabulary.forms()) {
            if (form.term().kind().isOfTheTrade() && form.inflection() == Form.Inflection.LISTED) {
                forms.computeIfAbsent(form.term(), term -> new EnumMap<>(Tongue.class))
                        .computeIfAbsent(form.tongue(), tongue -> new ArrayList<>())
                        .add(form.words());
            }
        }
        return forms.entrySet().stream()
                .map(entry -> new Entry(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** The term that some words say, if they are known as a whole. */
    public static Optional<Entry> entry(Vocabulary vocabulary, String words) {
        return vocabulary
                .meaning(words)
                .map(Form::term)
                .flatMap(term -> entries(vocabulary).stream()
                        .filter(entry -> entry.term().equals(term))
                        .findFirst());
    }
}
