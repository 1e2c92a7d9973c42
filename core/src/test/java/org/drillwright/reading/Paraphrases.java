package org.drillwright.reading;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A matrix of paraphrase: sentences put together from constructions and actions, each with what it means put together from
 * what its parts mean. How the file is written stands at its head.
 */
final class Paraphrases {

    /** A part of a sentence: whose action, in which form, with which adjective. */
    private static final Pattern PART =
            Pattern.compile("\\b([AaBb])\\.(v|3|ing|pp|inf|n|N|doing|does|done|doinf|do)\\b(?:\\[(.*?)])?");

    private static final List<String> FORMS = List.of("v", "3", "ing", "pp", "inf");
    private static final List<String> LIGHT = List.of("do", "does", "doing", "done", "doinf");

    private final Map<String, List<String>> verbs = new HashMap<>();
    private final Map<String, List<Value>> slots = new HashMap<>();
    private final Map<String, List<String>> followers = new HashMap<>();
    private final Map<String, Action> actions = new LinkedHashMap<>();
    private final List<Construction> constructions = new ArrayList<>();

    private record Value(String words, String meaning) {}

    /** A way to say an action: words, the verbs that do it if it is a noun, what it means. */
    private record Way(String words, List<String> light, String meaning) {}

    private record Action(String name, String group, List<Way> orders, List<Way> nouns) {}

    private record Construction(String name, List<String> first, List<String> second, List<Template> templates) {}

    private record Template(String words, String meaning) {
        boolean has(char letter) {
            return PART.matcher(words).results().anyMatch(part -> part.group(1).equalsIgnoreCase("" + letter));
        }

        boolean hasNoun(char letter) {
            return PART.matcher(words)
                    .results()
                    .anyMatch(part -> part.group(1).equalsIgnoreCase("" + letter) && !FORMS.contains(part.group(2)));
        }
    }

    /** A cell of the matrix with one of its sentences. */
    record Sentence(String construction, String template, String action, String other, Expectation expected) {}

    private Paraphrases(Stream<String> lines) {
        lines.filter(line -> !line.isBlank() && !line.startsWith("#")).forEach(this::line);
    }

    /** The matrix of a language. */
    static Paraphrases of(String tag) {
        try (Stream<String> lines = Files.lines(Path.of("src/test/resources/reading/matrix", tag + ".txt"))) {
            return new Paraphrases(lines);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void line(String line) {
        if (line.startsWith("  ")) {
            below(line.strip());
            return;
        }
        String[] words = line.split(" ", 2);
        String[] sides = words[1].split("( [=>] |: )", 2);
        switch (words[0]) {
            case "verb" -> verbs.put(words[1].split(" ")[0], List.of(words[1].split(" ")));
            case "slot" ->
                slots.put(
                        sides[0],
                        Arrays.stream(sides[1].split(" \\| "))
                                .map(one -> one.split(" = "))
                                .map(one -> new Value(one[0], one[1]))
                                .toList());
            case "action" ->
                actions.put(sides[0], new Action(sides[0], sides[1], new ArrayList<>(), new ArrayList<>()));
            case "pairs" -> followers.put(sides[0], List.of(sides[1].split(" ")));
            case "construction" -> {
                String[] groups = sides.length == 1 ? new String[0] : sides[1].split(" > ");
                constructions.add(new Construction(
                        sides[0],
                        groups.length == 0 ? List.of() : List.of(groups[0].split(" ")),
                        groups.length < 2 ? List.of() : List.of(groups[1].split(" ")),
                        new ArrayList<>()));
            }
            default -> throw new IllegalArgumentException(line);
        }
    }

    private void below(String line) {
        String[] sides = line.split(" => ", 2);
        if (!constructions.isEmpty()) {
            Template template = new Template(sides[0], "");
            String meaning = sides.length == 2 ? sides[1] : template.has('b') ? "A ; B" : "A";
            constructions.get(constructions.size() - 1).templates().add(new Template(sides[0], meaning));
            return;
        }
        Action action = actions.values().stream().reduce((one, next) -> next).orElseThrow();
        String[] done = sides[0].substring(2).split(" / ");
        if (line.startsWith("v ")) {
            action.orders().add(new Way(done[0], List.of(), sides[1]));
        } else {
            action.nouns().add(new Way(done[0], List.of(done[1].split(" ")), sides[1]));
        }
    }

    /**
     * A sentence for each template and each way to say its first action; what else is free in it is drawn.
     *
     * @param oneIn of so many sentences one is drawn; 1 for all
     */
    List<Sentence> drawn(Random random, int oneIn) {
        List<Sentence> all = new ArrayList<>();
        for (Construction construction : constructions) {
            for (Template template : construction.templates()) {
                for (Action first : actions.values()) {
                    List<Action> seconds = seconds(construction, template, first);
                    if (isOf(construction.first(), first) && !seconds.isEmpty()) {
                        for (Way way : ways(first, template, 'a')) {
                            if (random.nextInt(oneIn) == 0) {
                                Action second = seconds.get(random.nextInt(seconds.size()));
                                all.add(sentence(construction, template, first, way, second, random));
                            }
                        }
                    }
                }
            }
        }
        return all;
    }

    private static boolean isOf(List<String> groups, Action action) {
        return groups.isEmpty() || groups.contains(action.group());
    }

    /** What may be the second action; the first itself where the sentence has but one. */
    private List<Action> seconds(Construction construction, Template template, Action first) {
        if (!template.has('b')) {
            return List.of(first);
        }
        List<String> groups = construction.second().isEmpty()
                ? followers.getOrDefault(first.group(), List.of())
                : construction.second();
        return actions.values().stream()
                .filter(action -> groups.contains(action.group()) && !action.equals(first))
                .filter(action -> !ways(action, template, 'b').isEmpty())
                .toList();
    }

    private List<Way> ways(Action action, Template template, char letter) {
        if (template.hasNoun(letter)) {
            return action.nouns();
        }
        return action.orders().isEmpty() ? action.nouns() : action.orders();
    }

    private Sentence sentence(
            Construction construction, Template template, Action first, Way way, Action second, Random random) {
        List<Way> others = template.has('b') ? ways(second, template, 'b') : List.of(way);
        Said one = said(way, random);
        Said two = said(others.get(random.nextInt(others.size())), random);
        boolean told = template.words().matches(".*(fencer|pupil|leader|follower|attacker|efender|One).*");
        String text = PART.matcher(template.words())
                .replaceAll(part -> Matcher.quoteReplacement(form(
                        part.group(1).equalsIgnoreCase("a") ? one : two,
                        part.group(1),
                        part.group(2),
                        part.group(3),
                        told,
                        random)));
        String meaning = meaning(template.meaning(), one.meaning(), two.meaning());
        return new Sentence(
                construction.name(),
                template.words(),
                first.name(),
                template.has('b') ? second.name() : "",
                Expectation.of(
                        construction.name(),
                        text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1),
                        meaning));
    }

    /** A way with its slots filled. */
    private record Said(String words, String light, String meaning) {}

    private Said said(Way way, Random random) {
        String words = way.words();
        String meaning = way.meaning();
        for (Map.Entry<String, List<Value>> slot : slots.entrySet()) {
            Value value = slot.getValue().get(random.nextInt(slot.getValue().size()));
            words = words.replace("<" + slot.getKey() + ">", value.words());
            meaning = meaning.replace("<" + slot.getKey() + ">", value.meaning());
        }
        String light = way.light().isEmpty()
                ? ""
                : way.light().get(random.nextInt(way.light().size()));
        return new Said(words, light, meaning);
    }

    private String form(Said said, String letter, String form, String adjective, boolean told, Random random) {
        boolean others = Character.isLowerCase(letter.charAt(0));
        String own = others || told ? "his" : "your";
        String partners = others ? "your" : told ? "the adversary's" : random.nextBoolean() ? "his" : "your partner's";
        String words = said.words()
                .replace("~", random.nextBoolean() ? own : "the")
                .replace("%", random.nextBoolean() ? partners : "the");
        if (said.light().isEmpty()) {
            String[] parts = words.split("[{}]", 3);
            return parts[0] + verb(parts[1], FORMS.indexOf(form)) + parts[2];
        }
        String noun = adjective == null
                ? words.replace("an * ", "an ").replace("* ", "")
                : words.replaceAll("an? \\*", "a " + adjective);
        return switch (form) {
            case "n" -> noun;
            case "N" -> noun.replaceFirst("^(an?|the|une?|l[ea]|un[ao]|il|lo) |^(un|l)'", "");
            case "done" -> verb(said.light(), 3);
            default -> verb(said.light(), Math.max(FORMS.indexOf(form), LIGHT.indexOf(form))) + " " + noun;
        };
    }

    /** A form of a verb; of several words one stands behind the other. */
    private String verb(String lemma, int form) {
        return verbs.get(lemma).get(form).replace('_', ' ');
    }

    /** What both mean, put into what the sentence means. */
    private static String meaning(String whole, String first, String second) {
        List<String> all = new ArrayList<>();
        for (String one : first.split(" \\| ")) {
            for (String two : second.split(" \\| ")) {
                all.add(whole.replaceAll("\\bB\\b", "\u0001")
                        .replaceAll("\\bA\\b", one)
                        .replace("\u0001", two));
            }
        }
        return String.join(" | ", all);
    }
}
