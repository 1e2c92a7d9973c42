package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All words of one language, in all their forms. Immutable once built. */
public final class Lexicon {

    private final Cutting cutting;
    private final WordTree tree;
    private final Supplier<Forms> forms;
    private final Enclitics enclitics;
    private final Compounds compounds;

    /**
     * A sense found in a sentence.
     *
     * @param end behind its last token
     */
    public record Match(LexicalEntry entry, int end) {}

    /** One form of an entry: how it is spelt, and the entry with what the form adds. */
    record Spelt(String words, LexicalEntry entry, LexicalEntry of, String form) {}

    /**
     * How words are inflected.
     *
     * @param verbs the paradigms of verbs
     * @param spelt all forms, in the order of the list
     */
    record Forms(List<Paradigm> verbs, List<Spelt> spelt) {

        Forms {
            verbs = List.copyOf(verbs);
            spelt = List.copyOf(spelt);
        }
    }

    /** @param forms asked for each time anew */
    Lexicon(Cutting cutting, WordTree tree, Supplier<Forms> forms, Enclitics enclitics, Compounds compounds) {
        this.cutting = cutting;
        this.tree = tree;
        this.forms = forms;
        this.enclitics = enclitics;
        this.compounds = compounds;
    }

    WordTree tree() {
        return tree;
    }

    /** Words written as one, folded, each with the words it stands for; before a vowel if it ends with an apostrophe. */
    public Map<String, List<String>> clitics() {
        return cutting.clitics().together();
    }

    /** A text cut into sentences. */
    public List<List<Token>> sentences(String text) {
        List<List<Token>> sentences = cutting.sentences(text);
        return enclitics.isEmpty() && compounds.isEmpty()
                ? sentences
                : sentences.stream()
                        .map(sentence -> sentence.stream().flatMap(this::apart).toList())
                        .toList();
    }

    /** Orders, infinitives and gerunds do; what somebody does has its pronouns before it. */
    private static boolean takesEnclitics(LexicalEntry entry) {
        return entry.category().equals("V")
                && (entry.features().is("form", "base") || entry.features().is("form", "ing"));
    }

    /** The words of one that was written as one and is not listed so: a verb with its pronouns, a compound. */
    private Stream<Token> apart(Token token) {
        String word = token.folded();
        if (!token.isWord() || tree.lists(word)) {
            return Stream.of(token);
        }
        List<String> parts =
                enclitics.parts(word, verb -> tree.sensesOf(verb).stream().anyMatch(Lexicon::takesEnclitics));
        return (parts.size() > 1 ? parts : compounds.parts(word, this::kinds))
                .stream().map(part -> part.equals(word) ? token : new Token(part, token.span()));
    }

    /** A word that is listed, and its categories; empty if it is not. */
    private Set<String> kinds(String word) {
        List<LexicalEntry> senses = tree.sensesOf(word);
        if (senses.isEmpty()) {
            return Set.of();
        }
        Set<String> kinds = new HashSet<>(Set.of(word));
        senses.forEach(entry -> kinds.add(entry.category()));
        return kinds;
    }

    /**
     * A sentence with the words in full that were cut short at will.
     *
     * @param known whether a word stands as it is
     */
    public List<Token> inFull(List<Token> sentence, Predicate<String> known) {
        return sentence.stream()
                .map(token -> token.isWord() && !known.test(token.folded())
                        ? cutting.clipping()
                                .word(token.folded())
                                .map(word -> new Token(word, token.span()))
                                .orElse(token)
                        : token)
                .toList();
    }

    /** A text cut into words and stops, as one sentence. */
    public List<Token> words(String text) {
        return sentences(text).stream().flatMap(List::stream).toList();
    }

    /** The senses that begin at a token, of one word and of several. */
    public List<Match> at(List<Token> sentence, int from) {
        List<Match> found = new ArrayList<>();
        int node = WordTree.ROOT;
        for (int at = from; at < sentence.size(); at++) {
            node = tree.next(node, sentence.get(at).folded());
            if (node < 0) {
                break;
            }
            for (LexicalEntry entry : tree.senses(node)) {
                found.add(new Match(entry, at + 1));
            }
        }
        return found;
    }

    /** The senses of some words taken as a whole. */
    public List<LexicalEntry> entries(String words) {
        List<Token> tokens = words(words);
        return at(tokens, 0).stream()
                .filter(match -> match.end() == tokens.size())
                .map(Match::entry)
                .toList();
    }

    /** Whether a word alone is listed. */
    public boolean lists(String folded) {
        return tree.lists(folded);
    }

    /** All words that are listed alone. */
    public Set<String> single() {
        return Collections.unmodifiableSet(tree.listed());
    }

    /** The entries of a category in their forms, in the order of the list. */
    public List<LexicalEntry> ofCategory(String category) {
        return tree.ofCategory(category);
    }

    /** Every entry, in the order of the list, with its forms by name; gathered anew, as who only reads never asks for it. */
    public Map<LexicalEntry, Map<String, String>> forms() {
        return byEntry(forms.get().spelt());
    }

    private static Map<LexicalEntry, Map<String, String>> byEntry(List<Spelt> spelt) {
        Map<LexicalEntry, Map<String, String>> forms = new LinkedHashMap<>();
        for (Spelt one : spelt) {
            forms.computeIfAbsent(one.of(), entry -> new LinkedHashMap<>()).putIfAbsent(one.form(), one.words());
        }
        return forms;
    }

    /**
     * A new verb's forms, each with the form of the known verb that it stands for.
     *
     * @param lemma of the new verb; its first word takes the endings
     * @param known a listed verb; none is made if it is not one
     */
    public Map<String, String> inflected(String lemma, String known) {
        Map<String, String> made = new LinkedHashMap<>();
        List<Token> words = words(lemma);
        if (words.isEmpty()) {
            return made;
        }
        String first = words.get(0).folded();
        String rest = words.stream().skip(1).map(token -> " " + token.folded()).collect(Collectors.joining());
        Forms all = forms.get();
        byEntry(all.spelt()).forEach((entry, spelt) -> {
            if (entry.category().equals("V") && entry.lemma().equals(Spelling.fold(known.strip()))) {
                all.verbs().stream()
                        .flatMap(paradigm -> paradigm.inflect(first).stream())
                        .findFirst()
                        .ifPresent(forms -> forms.forEach(form -> {
                            String same = spelt.get(form.getKey());
                            if (same != null) {
                                made.put(form.getValue() + rest, same);
                            }
                        }));
            }
        });
        return made;
    }
}
