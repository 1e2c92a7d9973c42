package org.drillwright.notation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** Reads the vocabulary's own files, whose form is explained at their head. */
final class WordList {

    private final List<Form> forms = new ArrayList<>();
    private TermKind kind = TermKind.FOOTWORK;
    private Term term = new Term(TermKind.FOOTWORK, "");

    private WordList() {}

    static List<Form> load(String name) {
        try (InputStream in = WordList.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the vocabulary lacks " + name);
            }
            return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    static List<Form> read(String text) {
        WordList list = new WordList();
        text.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).forEach(list::line);
        return list.forms;
    }

    private void line(String line) {
        if (line.startsWith("[")) {
            String heading = line.substring(1, line.indexOf(']'));
            kind = Arrays.stream(TermKind.values())
                    .filter(candidate -> candidate.heading().equals(heading))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no kind of term is called " + heading));
            return;
        }
        int colon = line.indexOf(':');
        String head = line.substring(0, colon).strip();
        Tongue tongue = Tongue.ENGLISH;
        if (line.startsWith(" ")) {
            tongue = Tongue.of(head);
        } else {
            term = new Term(kind, head);
        }
        for (String form : line.substring(colon + 1).split(",")) {
            add(form.strip(), tongue);
        }
    }

    private void add(String form, Tongue tongue) {
        if (form.startsWith("~")) {
            addVerb(form.substring(1), tongue);
        } else if (form.startsWith("+")) {
            String noun = form.substring(1);
            add(noun, tongue, Form.Inflection.LISTED);
            add(noun + "s", tongue, Form.Inflection.MADE);
        } else if (!form.isEmpty()) {
            add(form, tongue, Form.Inflection.LISTED);
        }
    }

    private void addVerb(String form, Tongue tongue) {
        int space = form.indexOf(' ');
        String verb = space < 0 ? form : form.substring(0, space);
        String rest = space < 0 ? "" : form.substring(space);
        for (String made : tongue.forms(verb)) {
            add(made + rest, tongue, inflection(verb, made, tongue));
        }
        if (rest.isEmpty()) {
            Set<String> participles = tongue.participles(verb);
            Term describing = new Term(TermKind.MANNER, "participle");
            participles.forEach(made -> forms.add(new Form(describing, tongue, made, Form.Inflection.MADE)));
        }
    }

    private static Form.Inflection inflection(String verb, String made, Tongue tongue) {
        if (made.equals(verb)) {
            return Form.Inflection.LISTED;
        }
        if (tongue != Tongue.ENGLISH) {
            boolean gerund = made.endsWith("ant") || made.endsWith("ndo");
            return gerund ? Form.Inflection.GERUND : Form.Inflection.MADE;
        }
        return made.endsWith("ing") ? Form.Inflection.GERUND : Form.Inflection.THIRD;
    }

    private void add(String words, Tongue tongue, Form.Inflection inflection) {
        forms.add(new Form(term, tongue, words, inflection));
    }
}
