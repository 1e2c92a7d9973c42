package org.drillwright.lexicon;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Reads a word list. A line is {@code CATEGORY lemma|lemma feature=value … [par=…]}, or begins with a word in small
 * letters that says how the language is written: {@code paradigm}, {@code forms}, {@code whole}, {@code leading},
 * {@code trailing}, {@code enclitic}, {@code compound}, {@code link}, {@code capitals}, {@code verbs}, {@code short},
 * {@code shortened}, {@code clipped}.
 */
public final class LexiconFile {

    private static final String VERB = "V";

    /** Lines that only say how forms are made. */
    private static final Set<String> INFLECTS = Set.of("paradigm", "forms", "verbs");

    private final List<Paradigm> paradigms = new ArrayList<>();
    private final List<String> listedForms = new ArrayList<>();
    private final Map<String, List<String>> whole = new HashMap<>();
    private final Map<String, List<String>> leading = new HashMap<>();
    private final Map<String, List<String>> trailing = new HashMap<>();
    private final Map<String, String> enclitic = new LinkedHashMap<>();
    private final List<Compounds.Pair> compounds = new ArrayList<>();
    private final List<String> links = new ArrayList<>(List.of(""));
    private final Set<String> shortened = new HashSet<>();
    private boolean capitals;

    /** Categories that are inflected as verbs are. */
    private final Set<String> verbs = new HashSet<>();

    private final Set<String> clipped = new HashSet<>();
    private final List<Lexicon.Spelt> spelt = new ArrayList<>();
    private final Set<LexicalEntry> seen = new HashSet<>();

    private LexiconFile() {}

    /**
     * Builds the word list of a language.
     *
     * @param lines of its files
     * @throws IllegalArgumentException if a line cannot be used, with the line
     */
    public static Lexicon read(List<String> lines) {
        LexiconFile file = new LexiconFile();
        file.takeAll(TableLines.of(lines));
        Set<String> parts = file.parts();
        Cutting cutting = file.cutting(new Clipping(file.clipped, parts::contains));
        WordTree tree = file.tree(cutting, parts);
        Lexicon.Forms forms = file.forms();
        return file.lexicon(cutting, tree, () -> forms);
    }

    /**
     * The word list as bytes that {@link #unpacked} reads: how the language is written, and the words in all their forms.
     *
     * @param lines as for {@link #read}
     */
    public static byte[] packed(List<String> lines) {
        List<String> written = TableLines.of(lines).stream()
                .filter(line -> !Character.isUpperCase(line.charAt(0))
                        && !INFLECTS.contains(TableLines.words(line).get(0)))
                .toList();
        byte[] text = String.join("\n", written).getBytes(StandardCharsets.UTF_8);
        byte[] tree = read(lines).tree().packed();
        return ByteBuffer.allocate(Integer.BYTES + text.length + tree.length)
                .putInt(text.length)
                .put(text)
                .put(tree)
                .array();
    }

    /**
     * The word list of what {@link #packed} gave.
     *
     * @param lines what it was packed of, read only if the forms of words are asked for
     */
    public static Lexicon unpacked(ByteBuffer packed, Supplier<List<String>> lines) {
        ByteBuffer text = packed.slice(packed.position() + Integer.BYTES, packed.getInt());
        packed.position(packed.position() + text.remaining());
        WordTree tree = WordTree.unpacked(packed);
        LexiconFile file = new LexiconFile();
        file.takeAll(StandardCharsets.UTF_8.decode(text).toString().lines().toList());
        Cutting cutting = file.cutting(new Clipping(file.clipped, tree::spells));
        return file.lexicon(cutting, tree, () -> {
            LexiconFile whole = new LexiconFile();
            whole.takeAll(TableLines.of(lines.get()));
            return whole.forms();
        });
    }

    private void takeAll(List<String> lines) {
        for (String line : lines) {
            try {
                take(TableLines.words(line));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(e.getMessage() + " in the line: " + line, e);
            }
        }
    }

    private Cutting cutting(Clipping clipping) {
        return new Cutting(new Clitics(whole, leading, trailing), shortened, clipping, capitals);
    }

    private WordTree tree(Cutting cutting, Set<String> parts) {
        WordTreeMaker tree = new WordTreeMaker();
        for (Lexicon.Spelt one : spelt) {
            tree.add(cut(cutting, one.words()), one.entry());
        }
        return tree.made(parts);
    }

    private Lexicon.Forms forms() {
        return new Lexicon.Forms(
                paradigms.stream()
                        .filter(paradigm -> paradigm.names().contains(VERB))
                        .toList(),
                spelt);
    }

    private Lexicon lexicon(Cutting cutting, WordTree tree, Supplier<Lexicon.Forms> forms) {
        return new Lexicon(cutting, tree, forms, new Enclitics(enclitic), new Compounds(compounds, links));
    }

    /** Most forms are words of plain letters: they are parted at blanks, since to cut them takes longer. */
    private static List<String> cut(Cutting cutting, String form) {
        for (int at = 0; at < form.length(); at++) {
            char letter = form.charAt(at);
            if (letter != ' ' && (letter < 'a' || letter > 'z')) {
                return cutting.sentences(form).stream()
                        .flatMap(List::stream)
                        .map(Token::folded)
                        .toList();
            }
        }
        if (form.indexOf(' ') < 0 && cutting.isOne(form)) {
            return List.of(form);
        }
        List<String> words = new ArrayList<>();
        for (String word : form.split(" ")) {
            words.addAll(cutting.clitics().parts(word));
        }
        return words;
    }

    /** Of a language that cuts no word at will nothing is gathered. */
    private Set<String> parts() {
        Set<String> parts = new LinkedHashSet<>();
        if (!clipped.isEmpty()) {
            spelt.forEach(form -> addParts(form.words(), parts));
        }
        return parts;
    }

    private static void addParts(String words, Set<String> parts) {
        int begin = 0;
        for (int at = 0; at <= words.length(); at++) {
            if (at == words.length() || " '-".indexOf(words.charAt(at)) >= 0) {
                parts.add(words.substring(begin, at));
                begin = at + 1;
            }
        }
    }

    private void take(List<String> words) {
        switch (words.get(0)) {
            case "paradigm" -> paradigms.add(Paradigm.parse(words.subList(1, words.size())));
            case "forms" -> listedForms.addAll(words.subList(1, words.size()));
            case "whole" -> whole.put(words.get(1), words.subList(2, words.size()));
            case "leading" -> leading.put(words.get(1), words.subList(2, words.size()));
            case "trailing" -> trailing.put(words.get(1), words.subList(2, words.size()));
            case "enclitic" -> enclitic.put(words.get(1), words.size() > 2 ? words.get(2) : "");
            case "compound" ->
                compounds.add(new Compounds.Pair(
                        Set.of(words.get(1).split("\\|")), Set.of(words.get(2).split("\\|"))));
            case "link" -> links.addAll(words.subList(1, words.size()));
            case "short" -> {
                whole.put(words.get(1), words.subList(2, words.size()));
                shortened.add(words.get(1));
            }
            case "verbs" -> verbs.addAll(words.subList(1, words.size()));
            case "capitals" -> capitals = true;
            case "clipped" -> clipped.addAll(words.subList(1, words.size()));
            case "shortened" -> shortened.addAll(words.subList(1, words.size()));
            default -> entries(words);
        }
    }

    private void entries(List<String> words) {
        if (words.size() < 2 || !Character.isUpperCase(words.get(0).charAt(0))) {
            throw new IllegalArgumentException("neither an entry nor a rule of spelling");
        }
        List<String> rest = new ArrayList<>(words.subList(2, words.size()));
        Optional<String> paradigm =
                rest.stream().filter(word -> word.startsWith("par=")).findFirst();
        rest.removeIf(word -> word.startsWith("par="));
        Features features = Features.parse(rest);
        for (String lemma : words.get(1).split("\\|")) {
            String plain = Spelling.fold(lemma.replace('_', ' '));
            LexicalEntry entry = new LexicalEntry(words.get(0), features, plain);
            if (!seen.add(entry)) {
                throw new IllegalArgumentException("'" + lemma + "' stands twice as " + words.get(0) + " " + features);
            }
            forms(entry, paradigm.map(word -> word.substring(4)).orElse(""));
        }
    }

    private void forms(LexicalEntry entry, String paradigm) {
        if (paradigm.contains("/")) {
            String[] forms = paradigm.split("/");
            for (int at = 0; at < forms.length; at++) {
                for (String form : forms[at].split(";")) {
                    spell(entry, listedForms.get(Math.min(at, listedForms.size() - 1)), Spelling.fold(form));
                }
            }
            return;
        }
        boolean verb = isVerb(entry);
        String name = !paradigm.isEmpty() ? paradigm : verb ? VERB : entry.category();
        String inflected = verb ? firstWord(entry.lemma()) : lastWord(entry.lemma());
        for (Paradigm one : paradigms) {
            Optional<List<Map.Entry<String, String>>> forms =
                    one.names().contains(name) ? one.inflect(inflected) : Optional.empty();
            if (forms.isPresent()) {
                forms.get().forEach(form -> spell(entry, form.getKey(), form.getValue()));
                return;
            }
        }
        if (!paradigm.isEmpty() && !paradigm.equals("inv")) {
            throw new IllegalArgumentException("no paradigm " + paradigm + " for '" + entry.lemma() + "'");
        }
        spelt.add(new Lexicon.Spelt(entry.lemma(), entry, entry, ""));
    }

    private boolean isVerb(LexicalEntry entry) {
        return entry.category().equals(VERB) || verbs.contains(entry.category());
    }

    private static String firstWord(String lemma) {
        int end = lemma.indexOf(' ');
        return end < 0 ? lemma : lemma.substring(0, end);
    }

    private static String lastWord(String lemma) {
        return lemma.substring(lemma.lastIndexOf(' ') + 1);
    }

    /** An inflected form: of a verb its first word, of a noun its last. */
    private void spell(LexicalEntry entry, String form, String inflected) {
        boolean verb = isVerb(entry);
        String lemma = entry.lemma();
        String words = verb
                ? inflected + lemma.substring(firstWord(lemma).length())
                : lemma.substring(0, lemma.length() - lastWord(lemma).length()) + inflected;
        Features more = form.equals("sg") ? Features.NONE : Features.of(Map.of(verb ? "form" : "num", form));
        LexicalEntry inflectedEntry =
                new LexicalEntry(entry.category(), entry.features().overlaidBy(more), lemma);
        spelt.add(new Lexicon.Spelt(words, inflectedEntry, entry, form));
    }
}
