package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.source.Span;

/**
 * Cuts a text into sentences of words and stops. Letters and digits part, a hyphen inside a word parts it; dashes,
 * slashes, arrows and brackets are commas; what stands in quotation marks is one call.
 */
final class Cutting {

    private static final Pattern PIECE =
            Pattern.compile("(?<call>\"[^\"]{1,300}\"|\u201c[^\u201d]{1,300}\u201d|\u00ab[^\u00bb]{1,300}\u00bb"
                    + "|\u201e[^\u201c\u201d]{1,300}[\u201c\u201d]|(?<![\\p{L}\\p{N}])['\u2018][^'\u2018\u2019\\n]{1,80}['\u2019](?![\\p{L}\\p{N}]))"
                    + "|(?<with>(?<![\\p{L}\\p{N}])[wW]/)"
                    + "|(?<item>(?<!\\S)(?:\\p{Nd}{1,2}[.)]|\\p{L}\\))(?=\\s))"
                    + "|(?<initials>(?<!\\p{L})\\p{L}(?:\\.\\p{L})+(?=\\.(?!\\p{L})))"
                    + "|(?<word>['\u2019]?[\\p{L}\\p{M}]+(?:['\u2019][\\p{L}\\p{M}]+)*['\u2019]?)"
                    + "|(?<number>(?<!\\p{N})1/2(?!\\p{N})|\\p{Nd}+|\\p{N})"
                    + "|(?<arrow>[-=]*>|\u2192)"
                    + "|(?<dash>\u2014|(?<!\\p{Nd})\u2013|\u2013(?!\\p{Nd})|[\u00b7\u2022|]|(?<=\\s)-+(?=\\s))"
                    + "|(?<chain>(?<=[\\p{L}\\p{Nd}])-(?=\\p{L}))"
                    + "|(?<sign>[.;:,!?()\\[\\]/&+@=\u00d7\u2026\u2019'])");

    private final Clitics clitics;
    private final Set<String> shortened;
    private final Clipping clipping;
    private final boolean capitals;

    /**
     * @param shortened words behind which a full stop may stand for letters left out
     * @param clipping words that are cut short at will
     * @param capitals whether nouns begin with a capital, so that it begins no sentence behind a word cut short
     */
    Cutting(Clitics clitics, Set<String> shortened, Clipping clipping, boolean capitals) {
        this.capitals = capitals;
        this.clitics = clitics;
        this.clipping = clipping;
        this.shortened = Set.copyOf(shortened);
    }

    /** Whether a word of plain letters stands for itself alone. */
    boolean isOne(String word) {
        return !clitics.whole().containsKey(word);
    }

    Clipping clipping() {
        return clipping;
    }

    Clitics clitics() {
        return clitics;
    }

    /** The sentences of a text; none is empty. */
    List<List<Token>> sentences(String text) {
        List<List<Token>> sentences = new ArrayList<>();
        List<Token> sentence = new ArrayList<>();
        Matcher piece = PIECE.matcher(text);
        int from = 0;
        int items = 0;
        while (piece.find(from)) {
            from = piece.end();
            Span span = new Span(piece.start(), piece.end());
            if (piece.group("call") != null) {
                sentence.add(new Token(Token.QUOTE, span));
            } else if (piece.group("item") != null
                    && isItem(piece.group(), items)
                    && (items > 0 || (sentences.isEmpty() && sentence.isEmpty()))) {
                end(sentence, sentences);
                sentence = new ArrayList<>();
                items += item(piece.group(), span, sentence);
            } else if (piece.group("item") != null) {
                from = piece.end() - 1;
                for (String part : clitics.parts(Spelling.fold(text.substring(piece.start(), from)))) {
                    sentence.add(new Token(part, new Span(piece.start(), from)));
                }
            } else if (piece.group("initials") != null && shortened.contains(joined(piece.group()))) {
                for (String part : clitics.parts(joined(piece.group()))) {
                    sentence.add(new Token(part, span));
                }
            } else if (piece.group("initials") != null) {
                from = piece.start() + Character.charCount(text.codePointAt(piece.start()));
                word(text, new Span(piece.start(), from), sentence);
            } else if (piece.group("word") != null) {
                word(text, span, sentence);
            } else if (piece.group("number") != null) {
                for (String part : clitics.parts(piece.group())) {
                    sentence.add(new Token(part, span));
                }
            } else if (piece.group("with") != null) {
                for (String part : clitics.parts("w")) {
                    sentence.add(new Token(part, span));
                }
            } else if (piece.group("chain") != null) {
                if (isChained(text, piece.start())) {
                    sentence.add(new Token(",", span));
                }
            } else if (piece.group("sign") == null) {
                sentence.add(new Token(",", span));
            } else if (!sign(text, span, sentence)) {
                end(sentence, sentences);
                sentence = new ArrayList<>();
            }
        }
        end(sentence, sentences);
        return sentences;
    }

    private void word(String text, Span span, List<Token> sentence) {
        String folded = Spelling.fold(text.substring(span.start(), span.end()));
        String bare = clitics.whole().containsKey(folded) ? folded : stripped(folded);
        int at = span.start() + folded.indexOf(bare);
        List<String> tail = folded.endsWith("'") ? clitics.trailing().getOrDefault("'", List.of()) : List.<String>of();
        Span place = folded.length() == span.length() ? new Span(at, at + bare.length()) : span;
        List<String> parts = clitics.parts(bare);
        String written = Spelling.withAccents(text.substring(span.start(), span.end()));
        for (String part : parts) {
            String end = written.substring(Math.max(0, written.length() - part.length()));
            sentence.add(new Token(part, part.equals(Spelling.fold(end)) ? end : part, place));
        }
        for (String part : tail) {
            sentence.add(new Token(part, place));
        }
    }

    private static String stripped(String word) {
        String bare = word.startsWith("'") ? word.substring(1) : word;
        return bare.endsWith("'") ? bare.substring(0, bare.length() - 1) : bare;
    }

    /** Takes a sign into the sentence; false if it ends it. */
    private boolean sign(String text, Span span, List<Token> sentence) {
        String sign = text.substring(span.start(), span.end());
        switch (sign) {
            case ",", ":", "=", "(", ")", "[", "]", "/" ->
                sentence.add(new Token(":=".contains(sign) ? ":" : ",", span));
            case "&", "+" -> sentence.add(new Token("&", span));
            case "\u00d7" -> sentence.add(new Token("x", span));
            case "@" -> clitics.parts("@").forEach(part -> sentence.add(new Token(part, span)));
            case "'", "\u2019" -> {}
            case "-" -> {
                return joinsShortened(text, span.start());
            }
            case "." -> {
                return !endsAt(text, span.end(), sentence, span);
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    /** A full stop ends a sentence unless it shortens a word, or what follows goes on small. */
    private boolean endsAt(String text, int behind, List<Token> sentence, Span span) {
        int next = behind;
        while (next < text.length() && Character.isWhitespace(text.charAt(next))) {
            next++;
        }
        boolean goesOn = next < text.length()
                && (Character.isLowerCase(text.charAt(next))
                        || (Character.isDigit(text.charAt(next)) && !isCount(text, next))
                        || ",;+&/)=\u2192\u00b7".indexOf(text.charAt(next)) >= 0);
        boolean shortens = !sentence.isEmpty() && isShortened(text, sentence.get(sentence.size() - 1));
        goesOn = goesOn
                || (shortens && next < text.length() && capitals)
                || (shortens && (isMark(text, next) || text.startsWith(":", behind) || joinsShortened(text, behind)))
                || (shortens && isShortInCapitals(text, next));
        if (!goesOn) {
            return true;
        }
        if (!shortens || isMark(text, next)) {
            sentence.add(new Token(",", span));
        }
        return false;
    }

    /** A hyphen between a word cut short and the next word, as in {@code adv.-lunge}. */
    private static boolean joinsShortened(String text, int at) {
        return at > 0
                && at + 1 < text.length()
                && text.charAt(at - 1) == '.'
                && text.charAt(at) == '-'
                && Character.isLetter(text.charAt(at + 1));
    }

    /**
     * A hyphen behind a mark such as {@code P4}, or between words cut short of which a third hangs on, parts what is done one
     * after the other. A single letter is held to what follows it.
     */
    private boolean isChained(String text, int at) {
        int from = at;
        while (from > 0 && isOfChain(text.charAt(from - 1))) {
            from--;
        }
        int end = at;
        while (end < text.length() && isOfChain(text.charAt(end))) {
            end++;
        }
        String left =
                text.substring(text.lastIndexOf('-', at - 1) < from ? from : text.lastIndexOf('-', at - 1) + 1, at);
        List<String> links = List.of(text.substring(from, end).split("-+"));
        return (isTerm(left) || (left.length() > 1 && links.size() > 2))
                && links.stream().allMatch(this::isLink);
    }

    private static boolean isOfChain(char sign) {
        return sign == '-' || Character.isLetterOrDigit(sign);
    }

    private boolean isLink(String written) {
        String word = Spelling.fold(written);
        return word.length() == 1
                || isTerm(written)
                || shortened.contains(word)
                || clipping.word(word).isPresent();
    }

    /** Letters and a number, as in {@code P4} and {@code CP6}. */
    private static boolean isTerm(String written) {
        return written.length() > 1
                && written.length() < 6
                && Character.isLetter(written.charAt(0))
                && Character.isDigit(written.charAt(written.length() - 1));
    }

    /** A number with a colon behind it, which begins what is done on that count. */
    private static boolean isCount(String text, int at) {
        int behind = at;
        while (behind < text.length() && Character.isDigit(text.charAt(behind))) {
            behind++;
        }
        return behind < text.length() && text.charAt(behind) == ':';
    }

    /** A capital and a number, as in {@code P4}: a term cut to its first letter. */
    private static boolean isMark(String text, int at) {
        return at + 1 < text.length()
                && Character.isUpperCase(text.charAt(at))
                && Character.isDigit(text.charAt(at + 1));
    }

    /** Whether a number or a letter counts the items of a list: one with a full stop only in its turn. */
    private static boolean isItem(String mark, int before) {
        return mark.endsWith(")") || mark.equals(before + 1 + ".");
    }

    /** The number of an item begins what is done on that count; its letter only parts it from the others. */
    private static int item(String mark, Span span, List<Token> sentence) {
        if (Character.isDigit(mark.charAt(0))) {
            sentence.add(new Token(mark.substring(0, mark.length() - 1), span));
            sentence.add(new Token(":", span));
        }
        return 1;
    }

    /** First letters of words, without the stops between them. */
    private static String joined(String initials) {
        return Spelling.fold(initials.replace(".", ""));
    }

    /** Whether it is written short, whatever it was taken for. */
    private boolean isShortened(String text, Token token) {
        Span span = token.span();
        String written = joined(text.substring(span.start(), span.end()));
        return shortened.contains(written) || clipping.word(written).isPresent();
    }

    /** Whether another word cut short stands there, written in capitals: 'rip. CO'. */
    private boolean isShortInCapitals(String text, int at) {
        int end = at;
        while (end < text.length() && Character.isUpperCase(text.charAt(end))) {
            end++;
        }
        boolean whole = end == text.length() || !Character.isLetterOrDigit(text.charAt(end));
        return end > at + 1 && whole && shortened.contains(Spelling.fold(text.substring(at, end)));
    }

    private static void end(List<Token> sentence, List<List<Token>> sentences) {
        if (!sentence.isEmpty()) {
            sentences.add(List.copyOf(sentence));
        }
    }
}
