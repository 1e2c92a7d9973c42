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
import org.drillwright.reading.GlossaryTerm;
import org.drillwright.reading.TermKind;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** What somebody who looks words up is told: how they are read, and how else that is said, in each language. */
final class WordsAnswer {

    /** Terms of one answer: more would not fit a screen. */
    private static final int MOST_TERMS = 4;

    private static final int INDENT = 2;

    private final TurnReader reader;
    private final boolean all;
    private final Locale language;
    private final List<String> lines = new ArrayList<>();
    private boolean cut;

    private WordsAnswer(TurnReader reader, boolean all, Locale language) {
        this.language = language;
        this.reader = reader;
        this.all = all;
    }

    /** @param all whether every word of a term is told, or only as many as fit a line */
    static String of(TurnReader reader, String words, boolean all, Locale language) {
        WordsAnswer answer = new WordsAnswer(reader, all, language);
        answer.reading(words);
        answer.terms(reader.terms(words));
        return answer.text();
    }

    /** Every term with every word. */
    static String ofAll(TurnReader reader, Locale language) {
        WordsAnswer answer = new WordsAnswer(reader, true, language);
        reader.glossary().items().forEach(answer::term);
        return answer.text();
    }

    /** A short way in: the names of the terms, and what can be asked. */
    static String wayIn(TurnReader reader, Locale language) {
        WordsAnswer answer = new WordsAnswer(reader, false, language);
        answer.say(Message.of(WordsAnswer.class, "words-answer.ask.about.a.word", answer.languages()));
        for (String example : List.of("word", "words", "turn")) {
            answer.lines.add("  drillwright words "
                    + Message.of(WordsAnswer.class, "words-answer.example." + example)
                            .in(language));
        }
        answer.lines.add("");
        answer.say(Message.of(WordsAnswer.class, "words-answer.these.are.the.terms"));
        Map<TermKind, List<String>> byKind = new TreeMap<>();
        reader.glossary()
                .items()
                .forEach(item -> byKind.computeIfAbsent(item.term().kind(), kind -> new ArrayList<>())
                        .add(item.term().id()));
        byKind.forEach((kind, ids) -> answer.paragraph(kind.words().in(language) + ": " + String.join(", ", ids)));
        return answer.text();
    }

    private Message languages() {
        return Message.or(
                reader.tags().stream().map(this::language).map(Message::plain).toList());
    }

    private String language(String tag) {
        return Locale.forLanguageTag(tag).getDisplayLanguage(language);
    }

    private void say(Message sentence) {
        lines.add(sentence.in(language));
    }

    private void reading(String words) {
        Utterance read = reader.read(words);
        read.unread().forEach(span -> unread(words, span));
        read.open()
                .forEach(span -> say(Message.of(WordsAnswer.class, "words-answer.leaves.it.open", part(words, span))));
        read.readings()
                .forEach(two -> say(Message.of(
                        WordsAnswer.class,
                        "words-answer.can.mean.or",
                        part(words, two.span()),
                        two.one(),
                        two.other())));
        if (isKnown(read)) {
            Message what = read.unread().isEmpty()
                    ? Message.of(WordsAnswer.class, "words-answer.quoted", words)
                    : Message.of(WordsAnswer.class, "words-answer.the.rest");
            say(Message.of(WordsAnswer.class, "words-answer.is.read.in.as", what, language(reader.tag(words))));
            reader.tags().forEach(tag -> labelled(tag, reader.said(read, tag)));
        }
        read.others().stream()
                .filter(OtherReading::asLikely)
                .map(other -> reader.said(other.utterance(), reader.tags().get(0)))
                .distinct()
                .forEach(other -> paragraph(Message.of(WordsAnswer.class, "words-answer.it.could.also.be", other)
                        .in(language)));
    }

    /** Whether anything of it is understood. */
    static boolean isKnown(Utterance read) {
        return read.actions().stream()
                .anyMatch(action -> !(action instanceof Action.Unread || action instanceof Action.Aside));
    }

    private void unread(String words, Span span) {
        say(Message.of(WordsAnswer.class, "words-answer.is.not.understood", part(words, span))
                .then(near(reader, words, span)));
    }

    /** What may have been meant; nothing if nobody knows. */
    static Message near(TurnReader reader, String words, Span span) {
        return reader.meant(words, span)
                .map(word -> Message.of(WordsAnswer.class, "words-answer.did.you.mean", word))
                .orElse(Message.none());
    }

    private static String part(String words, Span span) {
        return words.substring(span.start(), span.end());
    }

    /** Positions and targets last: what is done stands first. */
    private void terms(Set<GlossaryTerm> terms) {
        List<GlossaryTerm> told = terms.stream()
                .sorted(Comparator.comparing((GlossaryTerm term) -> !term.kind().isAction()))
                .toList();
        told.stream()
                .limit(all ? told.size() : MOST_TERMS)
                .forEach(term -> reader.glossary().item(term).ifPresent(this::term));
        cut |= told.size() > MOST_TERMS;
        if (cut && !all) {
            lines.add("");
            say(Message.of(WordsAnswer.class, "words-answer.all.lists.the.rest"));
        }
    }

    private void term(Glossary.Item item) {
        if (!lines.isEmpty()) {
            lines.add("");
        }
        say(Message.of(
                WordsAnswer.class,
                "words-answer.words.for",
                item.term().id(),
                item.term().kind().words()));
        for (String tag : reader.tags()) {
            List<String> words = item.in(tag);
            if (!words.isEmpty()) {
                labelled(tag, all ? String.join(", ", words) : inALine(words));
            }
        }
    }

    /** As many words as a line holds, and how many are left. */
    private String inALine(List<String> words) {
        int room = TextColumn.WIDTH
                - label("").length()
                - Message.of(WordsAnswer.class, "words-answer.and.more", "", 100)
                        .in(language)
                        .length();
        String shown = words.get(0);
        int count = 1;
        while (count < words.size() && shown.length() + 2 + words.get(count).length() <= room) {
            shown += ", " + words.get(count);
            count++;
        }
        cut |= count < words.size();
        return count < words.size()
                ? Message.of(WordsAnswer.class, "words-answer.and.more", shown, words.size() - count)
                        .in(language)
                : shown;
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
