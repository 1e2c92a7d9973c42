package org.drillwright.notation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.drillwright.source.Nearest;
import org.drillwright.source.Span;

/** The words of the trade: all forms of all terms, and the finding of them in a text, the longest first. */
public final class Vocabulary {

    private static final Vocabulary STANDARD =
            new Vocabulary(Stream.of("actions.words", "qualities.words", "common.words", "choice.words")
                    .flatMap(name -> WordList.load(name).stream())
                    .toList());

    private static final int SKIPPED_AT_MOST = 2;

    private final List<Form> forms;
    private final Node root = new Node();
    private final Set<String> determiners = new TreeSet<>();
    /** Persons, who determine nothing unless an 's' makes something theirs. */
    private final Set<String> owners = new TreeSet<>();

    /** Every word of every form: one of them in a strange place was hardly meant to be another. */
    private final Set<String> parts = new HashSet<>();

    private final Set<String> plain = new TreeSet<>();

    /** A word of a form, and what may follow it. */
    private static final class Node {
        private final Map<String, Node> next = new HashMap<>();
        private final List<Form> here = new ArrayList<>();
    }

    private record Match(Form form, int end) {}

    private Vocabulary(List<Form> forms) {
        this.forms = List.copyOf(forms);
        for (Form form : forms) {
            add(form);
        }
    }

    /** The vocabulary that comes with the program. */
    public static Vocabulary standard() {
        return STANDARD;
    }

    /**
     * This vocabulary with a school's own forms.
     *
     * @param words each new form with a form that is known already and says the same; an unknown one is left out
     */
    public Vocabulary with(Map<String, String> words) {
        List<Form> more = new ArrayList<>();
        words.forEach((words1, known) -> meaning(known)
                .ifPresent(form -> more.add(new Form(form.term(), form.tongue(), words1, Form.Inflection.LISTED))));
        if (more.isEmpty()) {
            return this;
        }
        more.addAll(forms);
        return new Vocabulary(more);
    }

    /** All forms, in the order of the vocabulary's files. */
    public List<Form> forms() {
        return forms;
    }

    /** What a form says, if it is known as a whole. */
    public Optional<Form> meaning(String words) {
        List<Token> tokens = Tokens.of(words);
        return longest(tokens, 0, form -> true)
                .filter(match -> match.end() == tokens.size())
                .map(Match::form);
    }

    /** The terms of the trade that a text says, in the order in which it first says them. */
    public Set<Term> terms(String text) {
        Set<Term> terms = new LinkedHashSet<>();
        for (Lexeme lexeme : lexemes(text)) {
            lexeme.form()
                    .map(Form::term)
                    .filter(term -> term.kind().isOfTheTrade())
                    .ifPresent(terms::add);
        }
        return terms;
    }

    /** The known word of the trade that an unknown one was perhaps meant to be. */
    public Optional<String> nearest(String word) {
        String folded = Tokens.fold(word);
        return parts.contains(folded) ? Optional.empty() : Nearest.slip(folded, plain);
    }

    private static boolean isPlain(Form form) {
        return form.inflection() == Form.Inflection.LISTED && !form.term().id().equals("aside");
    }

    private void add(Form form) {
        Node node = root;
        List<Token> tokens = Tokens.of(form.words());
        for (Token token : tokens) {
            node = node.next.computeIfAbsent(token.folded(), word -> new Node());
            parts.add(token.folded());
        }
        node.here.add(form);
        node.here.sort(Comparator.comparing((Form known) -> known.term().kind()));
        if (form.term().kind().isOfTheTrade() && isPlain(form)) {
            plain.add(form.words());
        }
        if (form.term().kind() == TermKind.DET) {
            tokens.forEach(token -> determiners.add(token.folded()));
            if (tokens.size() > 1 && tokens.get(tokens.size() - 1).folded().equals("s")) {
                owners.add(tokens.get(0).folded());
            }
        }
    }

    /** The text as lexemes; words of the choice list and of the cue list are not looked for. */
    List<Lexeme> lexemes(String text) {
        return lexemes(
                Tokens.of(text),
                form -> form.term().kind() != TermKind.CHOICE && form.term().kind() != TermKind.CUE);
    }

    /** The text as lexemes, looking only for the forms that are wanted. */
    List<Lexeme> lexemes(List<Token> tokens, Predicate<Form> wanted) {
        List<Lexeme> lexemes = new ArrayList<>();
        int at = 0;
        while (at < tokens.size()) {
            Token token = tokens.get(at);
            Optional<Match> match = token.isWord() ? longest(tokens, at, wanted) : Optional.empty();
            int end = match.map(Match::end).orElse(at + 1);
            Span span =
                    new Span(token.span().start(), tokens.get(end - 1).span().end());
            Optional<Form> form = match.map(Match::form).or(() -> number(token));
            lexemes.add(new Lexeme(form, token.folded(), span, !token.isWord()));
            at = end;
        }
        return lexemes;
    }

    private Optional<Match> longest(List<Token> tokens, int from, Predicate<Form> wanted) {
        return longest(root, tokens, from, 0, wanted);
    }

    private Optional<Match> longest(Node node, List<Token> tokens, int at, int skipped, Predicate<Form> wanted) {
        Optional<Match> best = first(node, wanted).map(form -> new Match(form, at));
        if (at >= tokens.size() || !tokens.get(at).isWord()) {
            return best;
        }
        Node next = node.next.get(tokens.get(at).folded());
        Optional<Match> longer = next == null ? Optional.empty() : longest(next, tokens, at + 1, 0, wanted);
        if (longer.isPresent()) {
            return longer;
        }
        boolean mayPass = node != root && skipped < SKIPPED_AT_MOST && determines(tokens, at);
        Optional<Match> passing =
                mayPass ? longest(node, tokens, at + 1, skipped + 1, wanted) : Optional.<Match>empty();
        return passing.filter(match -> match.end() > at + 1).or(() -> best);
    }

    private boolean determines(List<Token> tokens, int at) {
        String word = tokens.get(at).folded();
        boolean owned = at + 1 < tokens.size() && tokens.get(at + 1).folded().equals("s");
        return determiners.contains(word) && (!owners.contains(word) || owned);
    }

    private static Optional<Form> first(Node node, Predicate<Form> wanted) {
        for (Form form : node.here) {
            if (wanted.test(form)) {
                return Optional.of(form);
            }
        }
        return Optional.empty();
    }

    /** Bare numbers. */
    private static Optional<Form> number(Token token) {
        String word = token.folded();
        boolean number = token.isWord() && Character.isDigit(word.codePointAt(0));
        return number
                ? Optional.of(
                        new Form(new Term(TermKind.MANNER, "number"), Tongue.ENGLISH, word, Form.Inflection.LISTED))
                : Optional.empty();
    }
}
