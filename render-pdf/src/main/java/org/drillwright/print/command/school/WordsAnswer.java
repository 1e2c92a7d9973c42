package org.drillwright.print.command.school;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.drillwright.notation.Action;
import org.drillwright.notation.OtherReading;
import org.drillwright.notation.Utterance;
import org.drillwright.print.command.console.TextColumn;
import org.drillwright.reading.Glossary;
import org.drillwright.reading.Term;
import org.drillwright.reading.TermKind;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Span;

/** What somebody who looks words up is told: how they are read, and how else that is said, in each language. */
final class WordsAnswer {

    /** Terms of one answer: more would not fit a screen. */
    private static final int MOST_TERMS = 4;

    private static final int INDENT = 2;

    private final TurnReader reader;
    private final boolean all;
    private final List<String> lines = new ArrayList<>();
    private boolean cut;

    private WordsAnswer(TurnReader reader, boolean all) {
        this.reader = reader;
        this.all = all;
    }

    /** @param all whether every word of a term is told, or only as many as fit a line */
    static String of(TurnReader reader, String words, boolean all) {
        WordsAnswer answer = new WordsAnswer(reader, all);
        answer.reading(words);
        answer.terms(reader.terms(words));
        return answer.text();
    }

    /** Every term with every word. */
    static String ofAll(TurnReader reader) {
        WordsAnswer answer = new WordsAnswer(reader, true);
        reader.glossary().items().forEach(answer::term);
        return answer.text();
    }

    /** A short way in: the names of the terms, and what can be asked. */
    static String wayIn(TurnReader reader) {
        WordsAnswer answer = new WordsAnswer(reader, false);
        answer.lines.add("Ask about a word, several words or a whole turn, in " + answer.languages() + ":");
        answer.lines.add("  drillwright words octave");
        answer.lines.add("  drillwright words \"parry of octave\"");
        answer.lines.add("  drillwright words \"Extend to the high inside line and lunge.\"");
        answer.lines.add("");
        answer.lines.add("These are the terms; each has many words, and --all lists them.");
        Map<TermKind, List<String>> byKind = new TreeMap<>();
        reader.glossary()
                .items()
                .forEach(item -> byKind.computeIfAbsent(item.term().kind(), kind -> new ArrayList<>())
                        .add(item.term().id()));
        byKind.forEach((kind, ids) -> answer.paragraph(kind.word() + ": " + String.join(", ", ids)));
        return answer.text();
    }

    private String languages() {
        List<String> names = reader.tags().stream().map(WordsAnswer::language).toList();
        int last = names.size() - 1;
        return last < 1 ? String.join("", names) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }

    private static String language(String tag) {
        return Locale.forLanguageTag(tag).getDisplayLanguage(Locale.ENGLISH);
    }

    private void reading(String words) {
        Utterance read = reader.read(words);
        read.unread().forEach(span -> unread(words, span));
        read.open().forEach(span -> lines.add("'" + part(words, span) + "' leaves it open."));
        read.readings()
                .forEach(two -> lines.add(
                        "'" + part(words, two.span()) + "' can mean " + two.one() + " or " + two.other() + "."));
        if (isKnown(read)) {
            String what = read.unread().isEmpty() ? "'" + words + "'" : "The rest";
            lines.add(what + " is read, in " + language(reader.tag(words)) + ", as:");
            reader.tags().forEach(tag -> labelled(tag, reader.said(read, tag)));
        }
        read.others().stream()
                .filter(OtherReading::asLikely)
                .map(other -> reader.said(other.utterance(), reader.tags().get(0)))
                .distinct()
                .forEach(other -> paragraph("It could also be: " + other));
    }

    /** Whether anything of it is understood. */
    static boolean isKnown(Utterance read) {
        return read.actions().stream()
                .anyMatch(action -> !(action instanceof Action.Unread || action instanceof Action.Aside));
    }

    private void unread(String words, Span span) {
        String near = reader.meant(words, span)
                .map(word -> " Did you mean '" + word + "'?")
                .orElse("");
        lines.add("'" + part(words, span) + "' is not understood." + near);
    }

    private static String part(String words, Span span) {
        return words.substring(span.start(), span.end());
    }

    /** Positions and targets last: what is done stands first. */
    private void terms(Set<Term> terms) {
        List<Term> told = terms.stream()
                .sorted(Comparator.comparing((Term term) -> !term.kind().isAction()))
                .toList();
        told.stream()
                .limit(all ? told.size() : MOST_TERMS)
                .forEach(term -> reader.glossary().item(term).ifPresent(this::term));
        cut |= told.size() > MOST_TERMS;
        if (cut && !all) {
            lines.add("");
            lines.add("--all lists the rest.");
        }
    }

    private void term(Glossary.Item item) {
        if (!lines.isEmpty()) {
            lines.add("");
        }
        lines.add("Words for " + item.term().id() + " (" + item.term().kind().word() + "):");
        for (String tag : reader.tags()) {
            List<String> words = item.in(tag);
            if (!words.isEmpty()) {
                labelled(tag, all ? String.join(", ", words) : inALine(words));
            }
        }
    }

    /** As many words as a line holds, and how many are left. */
    private String inALine(List<String> words) {
        int room = TextColumn.WIDTH - label("").length() - " and 100 more".length();
        String shown = words.get(0);
        int count = 1;
        while (count < words.size() && shown.length() + 2 + words.get(count).length() <= room) {
            shown += ", " + words.get(count);
            count++;
        }
        cut |= count < words.size();
        return count < words.size() ? shown + " and " + (words.size() - count) + " more" : shown;
    }

    private String label(String tag) {
        int widest = reader.tags().stream()
                .mapToInt(each -> language(each).length())
                .max()
                .orElse(0);
        String name = tag.isEmpty() ? "" : language(tag);
        return " ".repeat(INDENT) + name + " ".repeat(widest - name.length() + 2);
    }

    private void labelled(String tag, String words) {
        String label = label(tag);
        lines.add(label
                + TextColumn.wrap(words, TextColumn.WIDTH - label.length()).stream()
                        .collect(Collectors.joining("\n" + " ".repeat(label.length()))));
    }

    private void paragraph(String words) {
        lines.addAll(TextColumn.wrap(words, TextColumn.WIDTH));
    }

    private String text() {
        return String.join("\n", lines) + "\n";
    }
}
