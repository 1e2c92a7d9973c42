package org.drillwright.read;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Slips that show in a line by itself: what to look for, what to say, and how the line would look mended. */
final class LineSlips {

    private interface Kind {
        Optional<Mend> in(int number, String line);
    }

    /** A line with a value: its indent, dash and key, then the value. */
    private static final Pattern VALUE = Pattern.compile("^(\\s*(?:- +)*(?:[\\w-]+:[ \u00a0]+|- +))(.*?)\\s*$");

    private static final Set<String> LIST_KEYS = Set.of("gear", "needs", "works-on", "tags", "cautions", "drills");

    /** Keys that a line can begin with; another first word may be the middle of a sentence. */
    private static final Set<String> KEYS = Set.of(
            "title",
            "level",
            "form",
            "weapon",
            "hands",
            "works-on",
            "needs",
            "gear",
            "purpose",
            "start",
            "opening",
            "steps",
            "closing",
            "repeat",
            "swap",
            "tempo",
            "note",
            "cautions",
            "variant-of",
            "tags",
            "revised",
            "accept",
            "number",
            "call",
            "leader",
            "follower",
            "distance",
            "safety",
            "say",
            "means",
            "name",
            "levels",
            "turns",
            "blades",
            "sets",
            "drills",
            "words",
            "parries",
            "card",
            "sheet",
            "language");

    private static final List<Kind> KINDS = List.of(
            LineSlips::tab,
            LineSlips::noBreakSpace,
            LineSlips::otherDash,
            LineSlips::tightDash,
            LineSlips::curlyQuotes,
            LineSlips::openQuote,
            LineSlips::textBehindQuote,
            LineSlips::openList,
            LineSlips::specialSign,
            LineSlips::colonInSentence,
            LineSlips::noSpaceBehindColon,
            LineSlips::missingColon,
            LineSlips::lostRemark);

    /** Slips that the YAML library may notice many lines later. */
    private static final List<Kind> FAR_REACHING = List.of(LineSlips::openQuote, LineSlips::openList);

    private LineSlips() {}

    /** All that may be wrong with a line, the likeliest first. */
    static Stream<Mend> in(int number, String line) {
        return KINDS.stream().flatMap(kind -> kind.in(number, line).stream());
    }

    /** What may be wrong with a line if the trouble shows far below it. */
    static Stream<Mend> farAbove(int number, String line) {
        return FAR_REACHING.stream().flatMap(kind -> kind.in(number, line).stream());
    }

    private static Optional<Mend> tab(int number, String line) {
        int at = line.indexOf('\t');
        if (at < 0 || !line.substring(0, at).matches("\\s*(- *)*([\\w-]+:)?\\s*")) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number, at, "A tab stands here; YAML wants spaces.", line.replaceAll("[ \\t]*\\t[ \\t]*", " ")));
    }

    private static Optional<Mend> noBreakSpace(int number, String line) {
        Matcher odd = Pattern.compile("^[\\s-]*?(\u00a0|[\\w-]+:\u00a0)").matcher(line);
        if (!odd.find()) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                odd.end() - 1,
                "A no-break space stands here; it looks like a space, but YAML does not take it for one.",
                line.replace('\u00a0', ' ')));
    }

    private static Optional<Mend> otherDash(int number, String line) {
        Matcher dash = Pattern.compile("^(\\s*)([*\u2022\u00b7\u2010-\u2015\u2212])(\\s*)([\\w-]+:.*)$")
                .matcher(line);
        if (!dash.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                dash.start(2),
                "An item of a list begins with a plain hyphen, not with '" + dash.group(2) + "'.",
                dash.group(1) + "- " + dash.group(4)));
    }

    private static Optional<Mend> tightDash(int number, String line) {
        Matcher dash = Pattern.compile("^(\\s*-)([\\w-]+:.*)$").matcher(line);
        if (!dash.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number, dash.end(1), "A space is missing behind the dash.", dash.group(1) + " " + dash.group(2)));
    }

    private static Optional<Mend> curlyQuotes(int number, String line) {
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
                "Curly quotes do not quote in YAML; straight ones do.",
                value.group(1) + Mend.quoted(whole.matches() ? whole.group(1) : value.group(2))));
    }

    private static Optional<Mend> openQuote(int number, String line) {
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
                "A quote is opened here and never closed.",
                value.group(1) + Mend.quoted(rest.stripTrailing())));
    }

    private static Optional<Mend> textBehindQuote(int number, String line) {
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
                        ? "The quotes round the text end here, at the same sign inside it."
                        : "Text stands behind the closing quote.",
                value.group(1) + Mend.quoted(around ? text.substring(1, text.length() - 1) : text)));
    }

    private static Optional<Mend> openList(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches()
                || !value.group(2).startsWith("[")
                || value.group(2).contains("]")) {
            return Optional.empty();
        }
        if (!LIST_KEYS.contains(value.group(1).replaceAll("[\\s:]", ""))) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                value.start(2),
                "A list is opened here with '[' and never closed.",
                value.group(1) + value.group(2) + "]"));
    }

    private static Optional<Mend> specialSign(int number, String line) {
        Matcher value = VALUE.matcher(line);
        if (!value.matches() || !value.group(2).matches("^([\\[{*&@%`!|>?]|- ).*")) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                value.start(2),
                "A text that begins with '" + value.group(2).charAt(0) + "' has a special meaning in YAML.",
                value.group(1) + Mend.quoted(value.group(2))));
    }

    private static Optional<Mend> colonInSentence(int number, String line) {
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
                "A colon inside a sentence needs quotes round the whole text.",
                value.group(1) + Mend.quoted(value.group(2))));
    }

    private static Optional<Mend> noSpaceBehindColon(int number, String line) {
        Matcher tight =
                Pattern.compile("^(\\s*(?:- +)?[a-z][a-z-]*):([^\\s/].*)$").matcher(line);
        if (!tight.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                tight.start(2),
                "A space is missing behind the colon.",
                tight.group(1) + ": " + tight.group(2)));
    }

    private static Optional<Mend> missingColon(int number, String line) {
        Matcher word = Pattern.compile("^(\\s*(?:- +)?)([a-z][a-z-]*)(\\s*[;=\uff1a\ufe55]\\s*|\\s+|$)(.*)$")
                .matcher(line);
        if (!word.matches() || !KEYS.contains(word.group(2))) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number,
                word.end(2),
                "A colon is missing behind '" + word.group(2) + "'.",
                (word.group(1) + word.group(2) + ": " + word.group(4)).stripTrailing()));
    }

    private static Optional<Mend> lostRemark(int number, String line) {
        Matcher value = VALUE.matcher(line);
        int sign = line.indexOf(" #");
        if (!value.matches() || sign < value.start(2) || value.group(2).matches("^[\"'].*")) {
            return Optional.empty();
        }
        return Optional.of(new Mend(
                number, sign + 1, "All that follows ' #' is lost.", value.group(1) + Mend.quoted(value.group(2))));
    }
}
