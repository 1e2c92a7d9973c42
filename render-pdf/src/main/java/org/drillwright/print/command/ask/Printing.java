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
import org.drillwright.print.command.printing.chosen.DrillChooser;
import org.drillwright.print.layout.words.Sentences;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/** Cards and handouts that are printed. */
final class Printing {

    private static final String ALL = "all";
    private static final String ONE = "one";
    private static final String CHANGED = "changed";
    private static final String TEST = "test";

    private static final Message SIZE_HELP = Message.of(Printing.class, "printing.a.is.the.size");

    private static final Message BACK_HELP = Message.of(Printing.class, "printing.pictures.show.the.phrase");

    private final DialogueContext table;
    private final SchoolFolder school;

    Printing(DialogueContext table) {
        this.table = table;
        this.school = table.school();
    }

    void cards() {
        Questionnaire form = table.form("cards");
        Predicate<String> which = word -> form.answer("which", ALL).equals(word);
        form.choice(
                        "which",
                        Message.of(Printing.class, "printing.which.cards"),
                        this::which,
                        Message.of(Printing.class, "printing.sets.are.defined.in"))
                .choice(
                        () -> which.test(ONE),
                        "drill",
                        Message.of(Printing.class, "printing.which.drill"),
                        () -> Drills.choices(school.entries()),
                        Drills.HOW_TO_CHOOSE)
                .choice(
                        () -> !which.test(TEST),
                        "size",
                        Message.of(Printing.class, "printing.what.size"),
                        this::sizes,
                        SIZE_HELP)
                .choice(
                        () -> !which.test(TEST),
                        "back",
                        Message.of(Printing.class, "printing.what.goes.on.the"),
                        () -> List.of(
                                new AnswerOption(Message.of(Printing.class, "printing.nothing"), "none"),
                                new AnswerOption(
                                        Message.of(Printing.class, "printing.the.phrase.in.pictures"), "pictures"),
                                new AnswerOption(
                                        Message.of(Printing.class, "printing.safety.and.conduct.in"), "safety")),
                        BACK_HELP);
        if (form.filled()) {
            print(form);
        }
    }

    private List<AnswerOption> which() {
        List<AnswerOption> choices =
                new ArrayList<>(List.of(new AnswerOption(Message.of(Printing.class, "printing.all.of.them"), ALL)));
        sets().forEach(set ->
                choices.add(new AnswerOption(Message.of(Printing.class, "printing.the.set", set), "set " + set)));
        choices.add(new AnswerOption(Message.of(Printing.class, "printing.one.drill"), ONE));
        choices.add(new AnswerOption(Message.of(Printing.class, "printing.only.what.changed.since"), CHANGED));
        choices.add(new AnswerOption(Message.of(Printing.class, "printing.a.test.sheet.to"), TEST));
        return choices;
    }

    /** Those that hold drills: where a school has made no sets, each of its levels counts as one. */
    private List<String> sets() {
        return new DrillChooser(school)
                .names().stream()
                        .filter(name -> school.school()
                                .set(name)
                                .filter(set -> !school.entriesOf(set).isEmpty())
                                .isPresent())
                        .toList();
    }

    /** That of the school first: it is what Enter should take. */
    private List<AnswerOption> sizes() {
        CardSize usual = school.school().card();
        return Stream.concat(
                        Stream.of(new AnswerOption(
                                Message.of(Printing.class, "printing.as.set.in.your", named(usual)), usual.word())),
                        Arrays.stream(CardSize.values())
                                .filter(size -> size != usual)
                                .map(size -> new AnswerOption(named(size), size.word())))
                .toList();
    }

    private static Message named(CardSize size) {
        String word = size.word().replaceFirst("^wall-", "").replaceFirst("^a", "A");
        Matcher inches = Pattern.compile("(\\d)x(\\d)").matcher(word);
        Matcher part = Pattern.compile("(quarter|half)-letter").matcher(word);
        Message name = inches.matches()
                ? Message.of(Printing.class, "printing.inches", inches.group(1), inches.group(2))
                : part.matches() ? Message.of(Printing.class, "printing.letter." + part.group(1)) : Message.plain(word);
        return Message.of(
                Printing.class,
                size.isForTheWall() ? "printing.size.wall" : "printing.size",
                name,
                Math.round(size.width()),
                Math.round(size.height()));
    }

    private void print(Questionnaire form) {
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

    private static List<String> what(String which, Questionnaire form) {
        return switch (which) {
            case ALL -> List.of();
            case ONE -> List.of(form.answer("drill", ""));
            case CHANGED -> List.of("--changed");
            default -> List.of("--set=" + which.substring("set ".length()));
        };
    }

    private static String fileName(String which, Questionnaire form) {
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
        Optional<String> better = better(done);
        if (better.isPresent() && isLargerWished(size, better.get())) {
            return printed(what, better.get(), back, file);
        }
        if (table.gap(done, Message.of(Sentences.class, "back.too.long", DialogueContext.WANTED))
                        .findFirst()
                        .isPresent()
                && isSafetyWished()) {
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
                        Message.of(Printing.class, "printing.print.anyway.with.draft"),
                        Message.of(Printing.class, "printing.a.draft.is.for"));
    }

    /** The largest of the sizes that the notes propose. */
    private Optional<String> better(Done done) {
        return Sentences.proposing(DialogueContext.WANTED, DialogueContext.ANYTHING).stream()
                .flatMap(said -> table.gap(done, said))
                .flatMap(word -> Arrays.stream(CardSize.values())
                        .filter(size -> size.word().equals(word)))
                .max(Comparator.naturalOrder())
                .map(CardSize::word);
    }

    private boolean isLargerWished(String size, String better) {
        return table.questions()
                .isFirst(
                        Message.of(Printing.class, "printing.for.some.of.them"),
                        Message.of(Printing.class, "printing.all.of.them.in", better),
                        Message.of(Printing.class, "printing.keep.as.listed.above", size),
                        SIZE_HELP);
    }

    private boolean isSafetyWished() {
        return !table.questions()
                .isFirst(
                        Message.of(Printing.class, "printing.on.some.of.them"),
                        Message.of(Printing.class, "printing.nothing.on.those.pictures"),
                        Message.of(Printing.class, "printing.safety.and.conduct.on"),
                        BACK_HELP);
    }

    void handout() {
        List<AnswerOption> sets = sets().stream()
                .map(set -> new AnswerOption(Message.of(Printing.class, "printing.the.set", set), set))
                .toList();
        Questionnaire form = table.form("handout")
                .choice(
                        "set",
                        Message.of(Printing.class, "printing.which.set"),
                        () -> sets,
                        Message.of(Printing.class, "printing.a.cover.the.safety"));
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
