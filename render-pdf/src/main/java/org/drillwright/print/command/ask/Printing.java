package org.drillwright.print.command.ask;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.model.CardSize;
import org.drillwright.print.command.printing.picks.Picking;
import org.drillwright.school.SchoolFolder;

/** Cards and handouts that are printed. */
final class Printing {

    private static final String ALL = "all";
    private static final String ONE = "one";
    private static final String CHANGED = "changed";
    private static final String TEST = "test";

    private static final String SIZE_HELP =
            "A6 is the size of a postcard, A7 half of it, A5 twice it. The type is never made smaller: a long"
                    + " drill needs a larger card, or more than one.";

    private static final String BACK_HELP =
            "Pictures show the phrase count by count. Safety is the rules of safety and conduct, the same on each card."
                    + " With a back, the printer has to print on both sides; the test sheet shows whether front"
                    + " and back line up.";

    /** What a note on a card proposes, in the words in which it does. */
    private static final Pattern BETTER_SIZE = Pattern.compile("choose size ([a-z0-9-]+)");

    private static final String BLANK_BACK = "the back stays blank";

    private final Table table;
    private final SchoolFolder school;

    Printing(Table table) {
        this.table = table;
        this.school = table.school();
    }

    void cards() {
        Form form = table.form("cards");
        Predicate<String> which = word -> form.answer("which", ALL).equals(word);
        form.choice(
                        "which",
                        "Which cards?",
                        this::which,
                        "Sets are defined in school.yaml, each with its drills in teaching order.")
                .choice(
                        () -> which.test(ONE),
                        "drill",
                        "Which drill?",
                        () -> Drills.choices(school.entries()),
                        "Type its number, or a part of its title that no other drill shares.")
                .choice(() -> !which.test(TEST), "size", "What size?", this::sizes, SIZE_HELP)
                .choice(
                        () -> !which.test(TEST),
                        "back",
                        "What goes on the back?",
                        () -> List.of(
                                new Choice("Nothing", "none"),
                                new Choice("The phrase in pictures", "pictures"),
                                new Choice("Safety and conduct in the hall", "safety")),
                        BACK_HELP);
        if (form.filled()) {
            print(form);
        }
    }

    private List<Choice> which() {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("All of them", ALL)));
        sets().forEach(set -> choices.add(new Choice("The set " + set, "set " + set)));
        choices.add(new Choice("One drill", ONE));
        choices.add(new Choice("Only what changed since it was last printed here", CHANGED));
        choices.add(new Choice("A test sheet, to see whether your printer lines up front and back", TEST));
        return choices;
    }

    /** Those that hold drills: where a school has made no sets, each of its levels counts as one. */
    private List<String> sets() {
        return new Picking(school)
                .names().stream()
                        .filter(name -> school.school()
                                .set(name)
                                .filter(set -> !school.entriesOf(set).isEmpty())
                                .isPresent())
                        .toList();
    }

    /** That of the school first: it is what Enter should take. */
    private List<Choice> sizes() {
        CardSize usual = school.school().card();
        return Stream.concat(
                        Stream.of(new Choice(named(usual) + ", as set in your school", usual.word())),
                        Arrays.stream(CardSize.values())
                                .filter(size -> size != usual)
                                .map(size -> new Choice(named(size), size.word())))
                .toList();
    }

    private static String named(CardSize size) {
        String word = size.word()
                .replaceFirst("^wall-", "")
                .replaceFirst("^a", "A")
                .replaceFirst("(\\d)x(\\d)", "$1 x $2 inches")
                .replaceFirst("^(quarter|half)-letter", "a $1 of Letter");
        return word + " (" + Math.round(size.width()) + " x " + Math.round(size.height()) + " mm)"
                + (size.isForTheWall() ? ", for the wall" : "");
    }

    private void print(Form form) {
        String which = form.answer("which", ALL);
        String size = form.answer("size", school.school().card().word());
        String back = form.answer("back", "none");
        List<String> what = what(which, form);
        Path file = table.root().resolve(fileName(which, form));
        if (which.equals(TEST)) {
            finish(table.run("cards", List.of("--test-sheet", "--out=" + file)), file);
            return;
        }
        finish(printed(what, size, back, file), file);
    }

    private static List<String> what(String which, Form form) {
        return switch (which) {
            case ALL -> List.of();
            case ONE -> List.of(form.answer("drill", ""));
            case CHANGED -> List.of("--changed");
            default -> List.of("--set=" + which.substring("set ".length()));
        };
    }

    private static String fileName(String which, Form form) {
        return switch (which) {
            case ALL -> "cards.pdf";
            case ONE -> form.answer("drill", "card") + ".pdf";
            case CHANGED -> "changed-cards.pdf";
            case TEST -> "test-sheet.pdf";
            default -> which.substring("set ".length()).replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-") + ".pdf";
        };
    }

    /** Prints, and again if what a note proposes is wished. */
    private Done printed(List<String> what, String size, String back, Path file) {
        List<String> arguments = new ArrayList<>(List.of("--card=" + size, "--back=" + back, "--out=" + file));
        arguments.addAll(what);
        Done done = table.run("cards", arguments);
        Optional<String> better = better(done.said());
        if (better.isPresent() && isLargerWished(size, better.get())) {
            return printed(what, better.get(), back, file);
        }
        if (done.said().contains(BLANK_BACK) && isSafetyWished()) {
            return printed(what, size, "safety", file);
        }
        if (done.code() == 1 && !what.contains("--changed") && isDraftWished()) {
            arguments.add("--draft");
            return table.run("cards", arguments);
        }
        return done;
    }

    private boolean isDraftWished() {
        return table.questions()
                .agreed(
                        "Print anyway, with DRAFT across the cards that have errors?",
                        "A draft is for reading at a desk, not for the hall.");
    }

    /** The largest of the sizes that the notes propose. */
    private static Optional<String> better(String said) {
        Matcher sizes = BETTER_SIZE.matcher(said);
        return sizes.results()
                .map(found -> found.group(1))
                .flatMap(word -> Arrays.stream(CardSize.values())
                        .filter(size -> size.word().equals(word)))
                .max(Comparator.naturalOrder())
                .map(CardSize::word);
    }

    private boolean isLargerWished(String size, String better) {
        return table.questions()
                .choice(
                        "For some of them a larger card is suggested above. Which would you like?",
                        List.of(
                                new Choice("All of them in " + better, better),
                                new Choice("Keep " + size + ", as listed above", size)),
                        Optional.of(better),
                        SIZE_HELP)
                .value()
                .equals(better);
    }

    private boolean isSafetyWished() {
        return table.questions()
                .choice(
                        "On some of them the pictures do not fit the back. What should go there instead?",
                        List.of(
                                new Choice("Nothing on those, pictures on the others", "pictures"),
                                new Choice("Safety and conduct, on all of them", "safety")),
                        Optional.of("pictures"),
                        BACK_HELP)
                .value()
                .equals("safety");
    }

    void handout() {
        List<Choice> sets =
                sets().stream().map(set -> new Choice("The set " + set, set)).toList();
        Form form = table.form("handout")
                .choice(
                        "set",
                        "Which set?",
                        () -> sets,
                        "A cover, the safety card, the cards with their backs, and a table to sign.");
        if (form.filled()) {
            String set = form.answer("set", sets.isEmpty() ? "" : sets.get(0).value());
            Path file = table.root().resolve("handout-" + set.replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-") + ".pdf");
            finish(table.run("handout", List.of("--out=" + file, "--", set)), file);
        }
    }

    private void finish(Done done, Path file) {
        if (done.code() == 0 && done.said().contains(file.toString())) {
            table.offer(file);
        }
    }
}
