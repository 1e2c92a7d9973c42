package org.drillwright.read;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.wording.Message;

/** Slips that show in a line by itself: what to look for, what to say, and how the line would look mended. */
final class LineSlips {

    /** A first word, and what stands where a colon should: another sign, an arrow, a space. */
    private static final Pattern MISSING_COLON =
            Pattern.compile("^(\\s*(?:- +)?)([A-Za-z][A-Za-z-]*?)(\\s*(?:[;=\uff1a\ufe55\u2236\ua789\u2192]|[-=]>|-$|-"
                    + " )\\s*|\\s+|$)(.*)$");

    private interface Kind {
        Optional<Mend> in(int number, String line);
    }

    /** A line with a value: its indent, dash and key, then the value. */
    private static final Pattern VALUE = Pattern.compile("^(\\s*(?:- +)*(?:[\\w-]+:[ \u00a0]+|- +))(.*?)\\s*$");

    /** A backslash with what it may stand before, or alone. */
    private static final Pattern ESCAPE = Pattern.compile(
            "\\\\(?:([0abt\tnvfre \"/\\\\N_LP]|x\\p{XDigit}{2}|u\\p{XDigit}{4}" + "|U\\p{XDigit}{8}|$)|)");

    private static final Pattern BEHIND_BRACKET =
            Pattern.compile("(\\[[^\\[\\]]*\\]|\\{[^{}]*\\})\\s*([^#\\s,\\]}].*)");

    private final List<Kind> kinds = List.of(
            this::tab,
            this::tabAlone,
            this::escape,
            this::marker,
            this::directive,
            this::noBreakSpace,
            this::otherDash,
            this::tightDash,
            this::stars,
            this::remark,
            this::dashAtTheEdge,
            this::comma,
            this::curlyQuotes,
            this::openQuote,
            this::quoteBeforeKey,
            this::textBehindQuote,
            this::openList,
            this::quoteInList,
            this::bracketTooMany,
            this::wrongBracket,
            this::behindBracket,
            this::commas,
            this::openBrace,
            this::bracketBeforeDashes,
            this::listInTheLine,
            this::specialSign,
            this::keyInSentence,
            this::colonInSentence,
            this::noSpaceBehindColon,
            this::missingColon,
            this::lostRemark);

    /** Slips that the YAML library may notice many lines later. */
    private final List<Kind> farReaching = List.of(this::openQuote, this::openList);

    private final FileKeys keys;

    LineSlips(FileKeys keys) {
        this.keys = keys;
    }

    /** All that may be wrong with a line, the likeliest first. */
    Stream<Mend> in(int number, String line) {
        return kinds.stream().flatMap(kind -> kind.in(number, line).stream());
    }

    /** What may be wrong with a line if the trouble shows far below it. */
    Stream<Mend> farAbove(int number, String line) {
        return farReaching.stream().flatMap(kind -> kind.in(number, line).stream());
    }

    private Optional<Mend> tab(int number, String line) {
        int at = line.indexOf('\t');
        if (at < 0 || !line.substring(0, at).matches("\\s*((- *)+([\\w-]+:)?|[\\w-]+:)\\s*")) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number, at, Message.of(LineSlips.class, "slip.tab"), line.replaceAll("[ \\t]*\\t[ \\t]*", " ")));
    }

    /** A line that looks empty, or holds a remark only. */
    private Optional<Mend> tabAlone(int number, String line) {
        return line.matches(" *\\t\\s*(#.*)?")
                ? Optional.of(new Mend(number, 0, Message.of(LineSlips.class, "slip.tab.in.front"), line.strip()))
                : Optional.empty();
    }

    /** Between double quotes a backslash changes the meaning of what follows (YAML 1.2.2, 5.7), or means nothing. */
    private Optional<Mend> escape(int number, String line) {
        if (line.indexOf('"') < 0 || line.indexOf('\\') < 0) {
            return Optional.empty();
        }
        Matcher sign = ESCAPE.matcher(line);
        StringBuilder mended = new StringBuilder();
        int first = -1;
        while (sign.find()) {
            boolean known = sign.group(1) != null;
            first = known || first >= 0 ? first : sign.start();
            String right = line.startsWith("\\'", sign.start()) ? "" : "\\\\";
            sign.appendReplacement(mended, Matcher.quoteReplacement(known ? sign.group() : right));
        }
        sign.appendTail(mended);
        return first < 0
                ? Optional.empty()
                : Optional.of(new Mend(number, first, Message.of(LineSlips.class, "slip.escape"), mended.toString()));
    }

    /** A line that would part documents from one another. */
    private Optional<Mend> marker(int number, String line) {
        Matcher marker = Pattern.compile("^(---|\\.\\.\\.)[ \\t]*(.*)$").matcher(line);
        if (!marker.matches() || line.matches("[-.]{4,}.*")) {
            return Optional.empty();
        }
        boolean key = marker.group(2).matches("[\\w-]+: .*");
        return Optional.of(new Mend(
                number,
                0,
                Message.of(LineSlips.class, "slip.marker", marker.group(1)),
                key ? marker.group(2) : "# " + line.strip()));
    }

    private Optional<Mend> directive(int number, String line) {
        Matcher directive = Pattern.compile("^%\\s*(.*)$").matcher(line);
        if (!directive.matches()) {
            return Optional.empty();
        }
        boolean key = directive.group(1).matches("[\\w-]+: .*");
        return Optional.of(new Mend(
                number,
                0,
                Message.of(LineSlips.class, "slip.directive"),
                key ? directive.group(1) : "# " + line.strip()));
    }

    private Optional<Mend> wrongBracket(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches() || !value.group(2).matches("\\[[^\\[\\]{}]*\\}|\\{[^\\[\\]{}]*\\]")) {
            return Optional.empty();
        }
        String text = value.group(2);
        char right = text.charAt(0) == '[' ? ']' : '}';
        return Optional.of(new Mend(
                number,
                value.end(2) - 1,
                Message.of(LineSlips.class, "slip.wrong.bracket", text.charAt(0), right),
                value.group(1) + text.substring(0, text.length() - 1) + right));
    }

    private Optional<Mend> behindBracket(int number, String line) {
        Matcher value = VALUE.matcher(line);
        Matcher list = BEHIND_BRACKET.matcher(value.matches() ? value.group(2) : "");
        if (!list.matches()) {
            return Optional.empty();
        }
        boolean text = !keys.isList(value.group(1).replaceAll("[\\s:]", ""))
                && !list.group(1).matches("\\{[\\w-]+: .*");
        return Optional.of(new Mend(
                number,
                value.start(2) + list.start(2),
                Message.of(LineSlips.class, "slip.behind.bracket"),
                value.group(1) + (text ? Mend.quoted(value.group(2)) : list.group(1) + " # " + list.group(2))));
    }

    /** Between brackets: a comma with nothing before it, and two texts with none between them. */
    private Optional<Mend> commas(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches() || !value.group(2).matches("\\[[^\\[\\]]*\\]|\\{[^{}]*\\}")) {
            return Optional.empty();
        }
        Matcher none = Pattern.compile("([\\[{,]\\s*),\\s*").matcher(value.group(2));
        if (none.find()) {
            return Optional.of(new Mend(
                    number,
                    value.start(2) + none.end(1),
                    Message.of(LineSlips.class, "slip.comma.for.nothing"),
                    value.group(1) + value.group(2).replaceAll("([\\[{,]\\s*)(?:,\\s*)+", "$1")));
        }
        Matcher two =
                Pattern.compile("(\"[^\"]*\"|'[^']*')\\s+(?=[^\\s,\\]}:])").matcher(value.group(2));
        return two.find()
                ? Optional.of(new Mend(
                        number,
                        value.start(2) + two.end(1),
                        Message.of(LineSlips.class, "slip.comma.missing"),
                        value.group(1) + two.replaceAll("$1, ")))
                : Optional.empty();
    }

    private Optional<Mend> openBrace(int number, String line) {
        Matcher value = VALUE.matcher(line);
        return value.matches() && value.group(2).matches("\\{[\\w-]+: [^{}\\[\\]]*")
                ? Optional.of(new Mend(
                        number,
                        value.start(2),
                        Message.of(LineSlips.class, "slip.open.brace"),
                        value.group(1) + value.group(2) + "}"))
                : Optional.empty();
    }

    private Optional<Mend> noBreakSpace(int number, String line) {
        Matcher odd = Pattern.compile("^[\\s-]*?(\u00a0|[\\w-]+:\u00a0)").matcher(line);
        if (!odd.find()) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                odd.end() - 1,
                Message.of(LineSlips.class, "slip.no.break.space"),
                line.replace('\u00a0', ' ')));
    }

    private Optional<Mend> otherDash(int number, String line) {
        Matcher dash = Pattern.compile(
                        "^(\\s*)([*\u2022\u00b7\u2010-\u2015\u2212]|--+)(\\s*)([\\w-]+:.*|(?<=\\s)\\S.*)$")
                .matcher(line);
        if (!dash.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                dash.start(2),
                Message.of(LineSlips.class, "slip.other.dash", dash.group(2)),
                dash.group(1) + "- " + dash.group(4)));
    }

    private Optional<Mend> tightDash(int number, String line) {
        Matcher dash = Pattern.compile("^(\\s*-)([^\\s-].*)$").matcher(line);
        if (!dash.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                dash.end(1),
                Message.of(LineSlips.class, "slip.tight.dash"),
                dash.group(1) + " " + dash.group(2)));
    }

    private Optional<Mend> stars(int number, String line) {
        Matcher bold = Pattern.compile("^(\\s*(?:- +)?)[*_]{1,3}([A-Za-z-]+)\\s*:?[*_]{1,3}\\s*:?\\s*(.*)$")
                .matcher(line);
        if (!bold.matches()) {
            return Optional.empty();
        }
        return keys.key(bold.group(2))
                .map(key -> new Mend(
                        number,
                        bold.start(2) - 1,
                        Message.of(LineSlips.class, "slip.bold"),
                        (bold.group(1) + key + ": " + bold.group(3)).stripTrailing()));
    }

    /** A remark as other notations write it, or a line of signs that parts what is above from what is below. */
    private Optional<Mend> remark(int number, String line) {
        boolean slashes = line.strip().startsWith("//");
        if (!slashes && !line.strip().matches("[=_*~-]{3,}")) {
            return Optional.empty();
        }
        String text = slashes ? line.strip().substring(2).strip() : line.strip();
        return Optional.of(new Mend(
                number,
                Mend.indent(line).length(),
                Message.of(LineSlips.class, "slip.remark"),
                Mend.indent(line) + "# " + text));
    }

    private Optional<Mend> dashAtTheEdge(int number, String line) {
        Matcher dash = Pattern.compile("^- +([a-z-]+)(:.*)$").matcher(line);
        return dash.matches() && keys.isOfTheFile(dash.group(1))
                ? Optional.of(new Mend(
                        number,
                        0,
                        Message.of(LineSlips.class, "slip.dash.before.key", dash.group(1)),
                        dash.group(1) + dash.group(2)))
                : Optional.empty();
    }

    private Optional<Mend> comma(int number, String line) {
        Matcher comma = Pattern.compile("^(.*:.*\\S)\\s*,\\s*$").matcher(line);
        if (!comma.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Mend(number, comma.end(1), Message.of(LineSlips.class, "slip.comma"), comma.group(1)));
    }

    private Optional<Mend> quoteInList(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches() || !value.group(2).matches("^\\[[^\"]*\"[^\"]*\\]$")) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                line.indexOf('"'),
                Message.of(LineSlips.class, "slip.quote.in.list"),
                value.group(1) + value.group(2).replace("\"", "")));
    }

    private Optional<Mend> bracketBeforeDashes(int number, String line) {
        Matcher open = Pattern.compile("^(\\s*([\\w-]+):) *\\[\\s*$").matcher(line);
        return open.matches() && keys.isList(open.group(2))
                ? Optional.of(new Mend(
                        number, open.end(1), Message.of(LineSlips.class, "slip.bracket.before.dashes"), open.group(1)))
                : Optional.empty();
    }

    private Optional<Mend> bracketTooMany(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches() || !value.group(2).matches("^\\[[^\\[\\]]*\\]+$")) {
            return Optional.empty();
        }
        int first = value.group(2).indexOf(']');
        return Optional.of(new Mend(
                number,
                value.start(2) + first + 1,
                Message.of(LineSlips.class, "slip.bracket.too.many"),
                value.group(1) + value.group(2).substring(0, first + 1)));
    }

    private Optional<Mend> listInTheLine(int number, String line) {
        Matcher list = Pattern.compile("^(\\s*)([\\w-]+): +(- .*)$").matcher(line);
        if (!list.matches() || !keys.isList(list.group(2))) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                list.start(3),
                Message.of(LineSlips.class, "slip.list.in.line"),
                list.group(1) + list.group(2) + ":\n" + list.group(1) + "  " + list.group(3)));
    }

    /** A key in the middle of another one's words, behind the end of a sentence. */
    private Optional<Mend> keyInSentence(int number, String line) {
        Matcher two = Pattern.compile("^(\\s*)((?:- +)?)([\\w-]+: .*?[^\\s,;.])([.!?]?)[,;]? +([A-Za-z-]+): +(\\S.*)$")
                .matcher(line);
        if (!two.matches()) {
            return Optional.empty();
        }
        return keys.key(two.group(5))
                .filter(key ->
                        two.group(3).substring(0, two.group(3).indexOf(':')).matches("[A-Za-z-]+"))
                .map(key -> new Mend(
                        number,
                        two.start(5),
                        Message.of(LineSlips.class, "slip.key.in.sentence", two.group(5)),
                        two.group(1) + two.group(2) + two.group(3) + two.group(4) + "\n" + two.group(1)
                                + " ".repeat(two.group(2).length()) + key + ": " + two.group(6)));
    }

    private Optional<Mend> curlyQuotes(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches() || !value.group(2).matches("^[\u201c\u201e\u00ab\u2018].*")) {
            return Optional.empty();
        }
        Matcher whole = Pattern.compile(
                        "^[\u201c\u201e\u00ab\u2018]\\s*([^\u201c\u201d\u00bb\u2019]*?)\\s*[\u201c\u201d\u00bb\u2019]$")
                .matcher(value.group(2));
        return Optional.of(new Mend(
                number,
                value.start(2),
                Message.of(LineSlips.class, "slip.curly.quotes"),
                value.group(1) + Mend.quoted(whole.matches() ? whole.group(1) : value.group(2))));
    }

    private Optional<Mend> openQuote(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches() || !value.group(2).matches("^[\"'].*")) {
            return Optional.empty();
        }
        char quote = value.group(2).charAt(0);
        String rest = value.group(2).substring(1);
        if (rest.replace("\\\"", "").replace("''", "").indexOf(quote) >= 0) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                value.start(2),
                Message.of(LineSlips.class, "slip.open.quote"),
                value.group(1)
                        + Mend.quoted(rest.stripTrailing().replaceFirst("[\"'\u201c\u201d\u2018\u2019\u00bb]$", ""))));
    }

    private Optional<Mend> quoteBeforeKey(int number, String line) {
        Matcher key =
                Pattern.compile("^(\\s*(?:- +)?)([\"'])([\\w-]+:(?: .*)?)$").matcher(line);
        return key.matches() && key.group(3).indexOf(key.group(2).charAt(0)) < 0
                ? Optional.of(new Mend(
                        number,
                        key.start(2),
                        Message.of(LineSlips.class, "slip.open.quote"),
                        key.group(1) + key.group(3)))
                : Optional.empty();
    }

    private Optional<Mend> textBehindQuote(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches()) {
            return Optional.empty();
        }
        String text = value.group(2);
        Matcher quote = Pattern.compile("^(\"[^\"]*\"|'[^']*')\\s*([^#\\s].*)$").matcher(text);
        if (!quote.matches()) {
            return Optional.empty();
        }
        boolean around = text.charAt(0) == text.charAt(text.length() - 1);
        return Optional.of(new Mend(
                number,
                value.start(2) + quote.start(2),
                around
                        ? Message.of(LineSlips.class, "slip.quote.inside")
                        : Message.of(LineSlips.class, "slip.behind.quote"),
                value.group(1) + Mend.quoted(around ? text.substring(1, text.length() - 1) : text)));
    }

    private Optional<Mend> openList(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches()
                || !value.group(2).startsWith("[")
                || value.group(2).contains("]")) {
            return Optional.empty();
        }
        if (!keys.isList(value.group(1).replaceAll("[\\s:]", ""))) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                value.start(2),
                Message.of(LineSlips.class, "slip.open.list"),
                value.group(1) + value.group(2) + "]"));
    }

    private Optional<Mend> specialSign(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches() || !value.group(2).matches("^([\\[{*&@%`!|>?]|- ).*")) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                value.start(2),
                Message.of(LineSlips.class, "slip.special.sign", value.group(2).charAt(0)),
                value.group(1) + Mend.quoted(value.group(2))));
    }

    private Optional<Mend> colonInSentence(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches()
                || value.group(2).matches("^[\"'\\[{].*")
                || !value.group(2).matches(".*:(\\s.*|$)")) {
            return Optional.empty();
        }
        Matcher colon = Pattern.compile(":(\\s|$)").matcher(value.group(2));
        return Optional.of(new Mend(
                number,
                value.start(2) + (colon.find() ? colon.start() : 0),
                Message.of(LineSlips.class, "slip.colon.in.sentence"),
                value.group(1) + Mend.quoted(value.group(2))));
    }

    private Optional<Mend> noSpaceBehindColon(int number, String line) {
        Matcher tight =
                Pattern.compile("^(\\s*(?:- +)?[a-z][a-z-]*):([^\\s/].*)$").matcher(line);
        if (!tight.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                tight.start(2),
                Message.of(LineSlips.class, "slip.tight.colon"),
                tight.group(1) + ": " + tight.group(2)));
    }

    private Optional<Mend> missingColon(int number, String line) {
        Matcher word = MISSING_COLON.matcher(line);
        if (!word.matches()) {
            return Optional.empty();
        }
        return keys.key(word.group(2))
                .or(() -> UnknownKey.ofTheSchool(word.group(2)))
                .map(key -> new Mend(
                        number,
                        word.end(2),
                        Message.of(LineSlips.class, "slip.missing.colon", word.group(2)),
                        (word.group(1) + key + ": " + word.group(4)).stripTrailing()));
    }

    private Optional<Mend> lostRemark(int number, String line) {
        Matcher value = VALUE.matcher(line);
        int sign = line.indexOf(" #");
        if (!value.matches() || sign < value.start(2) || value.group(2).matches("^[\"'].*")) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                sign + 1,
                Message.of(LineSlips.class, "slip.lost.remark"),
                value.group(1) + Mend.quoted(value.group(2))));
    }
}
