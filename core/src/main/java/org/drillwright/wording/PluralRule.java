package org.drillwright.wording;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * When a number takes one of a language's plural forms, as Unicode writes it, such as
 * {@code n % 10 = 2..4 and n % 100 != 12..14}: Unicode Technical Standard 35 (LDML), part 3, "Plural rules syntax". Only whole
 * numbers are asked about, so that its operands {@code n} and {@code i} are the number, and all others, which tell of decimals
 * and powers, are 0.
 *
 * @param ways of which one has to hold, each with all its relations
 */
record PluralRule(List<List<Relation>> ways) {

    private static final Pattern RELATION = Pattern.compile(
            "(?<operand>[niftvwce])\\s*(?:(?:%|mod)\\s*(?<by>[1-9]\\d*)\\s*)?(?<not>!?)=\\s*(?<ranges>[\\d.,\\s]+)");

    private static final Pattern RANGE = Pattern.compile("(?<from>\\d+)(?:\\.\\.(?<to>\\d+))?");

    PluralRule {
        ways = ways.stream().map(List::copyOf).toList();
    }

    /**
     * A number, or what is left of it, compared with ranges.
     *
     * @param by what it is divided by, of which the rest is compared; 0 if it is compared as it is
     * @param within whether it has to be in one of the ranges, or in none
     */
    record Relation(char operand, long by, boolean within, List<Range> ranges) {

        Relation {
            ranges = List.copyOf(ranges);
        }

        private boolean holds(long number) {
            long whole = operand == 'n' || operand == 'i' ? number : 0;
            long left = by == 0 ? whole : whole % by;
            return within == ranges.stream().anyMatch(range -> range.from() <= left && left <= range.to());
        }
    }

    /** Both ends are in it. */
    record Range(long from, long to) {}

    /**
     * Reads a rule; what stands behind {@code @} is only examples.
     *
     * @throws IllegalArgumentException if it is none, with its text
     */
    static PluralRule of(String text) {
        String rule = text.replaceFirst("@.*", "").strip();
        return new PluralRule(Stream.of(rule.split("\\bor\\b", -1))
                .map(way -> Stream.of(way.split("\\band\\b", -1))
                        .map(relation -> relation(relation.strip(), text))
                        .toList())
                .toList());
    }

    private static Relation relation(String written, String text) {
        Matcher relation = RELATION.matcher(written);
        if (!relation.matches()) {
            throw new IllegalArgumentException("no plural rule: " + text);
        }
        String by = relation.group("by");
        return new Relation(
                relation.group("operand").charAt(0),
                by == null ? 0 : Long.parseLong(by),
                relation.group("not").isEmpty(),
                Stream.of(relation.group("ranges").split(",", -1))
                        .map(range -> range(range.strip(), text))
                        .toList());
    }

    private static Range range(String written, String text) {
        Matcher range = RANGE.matcher(written);
        if (!range.matches()) {
            throw new IllegalArgumentException("no plural rule: " + text);
        }
        String from = range.group("from");
        String to = range.group("to");
        return new Range(Long.parseLong(from), Long.parseLong(to == null ? from : to));
    }

    /** @param number from 0 */
    boolean holds(long number) {
        return ways.stream().anyMatch(way -> way.stream().allMatch(relation -> relation.holds(number)));
    }
}
