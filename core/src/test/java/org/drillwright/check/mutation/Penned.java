package org.drillwright.check.mutation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.check.Sample;
import org.drillwright.model.Drill;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.source.Finding;

/**
 * What an instructor writes who follows a way out: the words of the refused turn, or of those beside it, written anew in
 * English as the sentence says. Nothing here knows how the program found the way.
 *
 * @param at the refused turn
 * @param words of what was refused, as they stand in it
 */
record Penned(Sample sample, Finding finding, Scene.At at, String words) {

    private static final Pattern LINE = Pattern.compile("(high|low)[ -](inside|outside)( line)?");
    private static final List<String> POSITIONS =
            List.of("prime", "seconde", "tierce", "quarte", "quinte", "sixte", "septime", "octave");
    private static final List<String> TOUCHES = List.of(
            "Thrust to the high inside line",
            "Thrust to the high outside line",
            "Thrust to the low inside line",
            "Thrust to the low outside line",
            "Cut to the head",
            "Cut to the flank",
            "Cut to the chest");
    private static final Pattern AWAY = Pattern.compile(
            "(?i),?( and| with| then)*( a)? ?(retreat|step back|jump back|go back)(ing)?( \\w+ steps)?");

    /** A way that is named, and what may be written for it: any of these drills. */
    record Way(String name, List<Drill> drafts) {}

    /** The ways that a finding names. */
    List<Way> ways() {
        String told = finding.wayOut().english().replaceAll(" The (leader|follower)'s turn changes with it\\.", "");
        List<Way> ways = new ArrayList<>();
        for (String sentence : told.split("(?<=\\.) (?=[A-Z])(?!Masks)")) {
            for (String name : names(sentence)) {
                ways.add(new Way(name, drafts(name)));
            }
        }
        return ways;
    }

    /** Whether the partner's turn is said to change as well. */
    boolean partnersTurnChanges() {
        return finding.wayOut().english().contains("'s turn changes with it.");
    }

    private static List<String> names(String sentence) {
        String told = sentence.replaceAll("\\.$", "").replace("first, and lunge", "first and lunge");
        Matcher closers = Pattern.compile("(?:From \\w+, )?(.*) would close it").matcher(told);
        if (closers.matches()) {
            return Stream.of(closers.group(1).replaceAll(" \\([^)]*\\)", "").split(" or "))
                    .map(name -> "parry " + name.toLowerCase(Locale.ROOT))
                    .toList();
        }
        for (String lead : List.of("Aim for ", "Choose a place on the target: ", "Change to ", "Beat in ")) {
            if (told.startsWith(lead)) {
                return each(told.substring(lead.length()))
                        .map(name -> lead.strip().toLowerCase(Locale.ROOT) + " " + name)
                        .toList();
            }
        }
        boolean one = Stream.of(
                        "Write 'Masks on'", "Step back out", "Give the", "Take the touch here", "Lunge here", "If ")
                .anyMatch(told::startsWith);
        if (told.equals("Recover first, forward or back")) {
            return List.of("recover forward first", "recover back first");
        }
        return one
                ? List.of(told.toLowerCase(Locale.ROOT))
                : each(told).map(Penned::small).toList();
    }

    private static Stream<String> each(String list) {
        return Arrays.stream(list.split(", or |, "));
    }

    private static String small(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    private List<Drill> drafts(String name) {
        Matcher quoted = Pattern.compile("write '(engage|return to guard|riposte by disengage|circular parry of \\w+)'")
                .matcher(name);
        if (name.startsWith("parry ") && POSITIONS.stream().anyMatch(name::endsWith)) {
            return List.of(parried(name.substring("parry ".length())));
        }
        if (name.startsWith("aim for ")) {
            String line = name.replaceFirst("aim for ", "").replaceAll(" \\(.*", "");
            String there = sent(line);
            // 'Over the hand' names a line of its own.
            return List.of(replaced(there), replaced(there.replaceFirst("(?i) (over|under) the (hand|wrist|arm)", "")));
        }
        if (name.startsWith("choose a place")) {
            return List.of(replaced(words.replaceFirst("(the )?thigh", name.substring(name.indexOf(": ") + 2))));
        }
        if (name.startsWith("change to ") || name.startsWith("beat in ")) {
            String at = name.substring(name.lastIndexOf(' ') + 1);
            return List.of(replaced((name.startsWith("beat") ? "Beat in " : "Change the engagement to ") + at));
        }
        if (name.startsWith("begin at ")) {
            return List.of(begun(name.substring("begin ".length())));
        }
        if (quoted.matches()) {
            return List.of(
                    switch (quoted.group(1)) {
                        case "engage" -> replaced(words.replaceFirst("(?i)change the engagement to", "Engage in"));
                        case "return to guard" ->
                            replaced(words.replaceFirst(
                                    "(?i)recover\\w*( back\\w*| forward)?( (to|on|the|in))*( guard)?( of)?",
                                    "Return to guard"));
                        case "riposte by disengage" -> replaced(composed("Riposte by disengage"));
                        default -> replaced(quoted.group(1));
                    });
        }
        if (name.startsWith("say 'by ")) {
            return List.of(replaced(words + " " + name.substring(5, name.length() - 1)));
        }
        return switch (name.replace("leader", "partner").replace("follower", "partner")) {
            case "parry it", "parry" -> POSITIONS.stream().map(this::parried).toList();
            case "evade it" -> List.of(added("Evade."));
            case "write 'take the touch'", "if the touch is taken on purpose, say so: 'take the touch'" ->
                List.of(added("Take the touch."));
            case "the partner's blade is held: a ceding parry answers it" ->
                POSITIONS.stream()
                        .map(position -> parried("ceding " + position))
                        .toList();
            case "go back one more step" -> List.of(added("Retreat."));
            case "go back 2 more steps" -> List.of(added("Retreat two steps."));
            case "if it is meant to land, write 'acknowledge the touch' here or on the next count",
                    "if it is meant to land, write 'acknowledge the touch' here" ->
                List.of(added("Acknowledge the touch."));
            case "if it is meant to land, write 'acknowledge the touch' on the next count" ->
                List.of(turn(at.next(), written(at.next()) + " Acknowledge the touch."));
            case "hold here" -> List.of(replaced("Hold on guard"), replaced("Hold"));
            case "write a touch into the partner's turn", "write an attack into the partner's turn" ->
                TOUCHES.stream()
                        .flatMap(touch -> Stream.of(touch + ".", touch + " with a lunge."))
                        .map(touch -> turn(at.partner(), (written(at.partner()) + " " + touch).strip()))
                        .toList();
            case "engage first" -> List.of(before("Engage"));
            case "beat the blade away first" -> List.of(before("Beat"));
            case "advance first" -> List.of(before("Advance"));
            case "recover forward first" -> List.of(before("Recover forward"));
            case "recover back first" -> List.of(before("Recover"));
            case "recover forward first and lunge" ->
                List.of(replaced("Recover forward, then " + small(words) + " with a lunge"));
            case "add a lunge" -> List.of(replaced(words + " with a lunge"));
            case "let the partner lunge" ->
                List.of(turn(at.partner(), written(at.partner()).replaceAll("\\.$", "") + " with a lunge."));
            case "let the partner stay" -> List.of(staying(at.partner()));
            case "do not go back", "leave out the step" -> List.of(staying(at), without(words));
            case "leave out the steps" ->
                List.of(replaced(words.replaceFirst("(?i)(advance|step forward)[^,]*?,? (and|then)( then)? ", "")));
            case "let the partner step back" ->
                List.of(turn(at.partner(), "Retreat, then " + small(written(at.partner()))));
            case "parry with the step" ->
                POSITIONS.stream()
                        .map(position -> added("Parry " + position + "."))
                        .toList();
            case "leave out the lunge" ->
                List.of(replaced(words.replaceAll("(?i),?( (with|and|on))*( a| the)? ?(full )?lung\\w+", "")));
            case "disengage", "call it a disengage" -> List.of(replaced(composed("Disengage")));
            case "cut over" -> List.of(replaced(composed("Cut over")));
            case "call it a straight thrust" -> List.of(replaced(composed("Straight thrust")));
            case "call it a one-two" -> List.of(replaced(composed("One-two")));
            case "call it a double" -> List.of(replaced(composed("Double")));
            case "call it an attack" ->
                List.of(
                        replaced(composed("Attack")),
                        replaced(composed("Attack with a cut")),
                        replaced(words.replaceFirst("(?i)(counter-)?riposte|remise|redouble(ment)?|reprise", "attack")),
                        replaced(words.replaceFirst("(?i)(the |a )?(counter-)?riposte by (a )?", "a ")));
            case "call it a riposte" -> List.of(replaced(words.replaceFirst("(?i)counter-riposte", "Riposte")));
            case "name the line it ends in", "name the line of the parry", "hit in the line of contact" ->
                List.of(replaced(sent(lineTold())));
            case "parry on the count before", "parry the riposte on the count before" ->
                POSITIONS.stream()
                        .map(position -> turn(before(), written(before()) + " Parry " + position + "."))
                        .toList();
            case "leave out the circle" -> List.of(replaced("Parry " + position()));
            case "leave out the kind of parry" ->
                List.of(replaced(words.replaceFirst("(?i)\\b(half-circular|simple|diagonal) ", "")));
            case "write 'move the hand' instead of 'parry'" -> List.of(replaced("Move the hand to " + position()));
            case "draw the target away and hit the arm" ->
                List.of(
                        replaced("Draw the target away and hit the forearm"),
                        replaced("Evade, then stop hit to the forearm"));
            case "parry first" ->
                POSITIONS.stream().map(position -> before("Parry " + position)).toList();
            case "have the partner change the engagement first" ->
                List.of(turn(at.partner(), "Change the engagement, then " + small(written(at.partner()))));
            case "write 'masks on' into the opening, before coming on guard" ->
                List.of(draft().opening("Masks on. " + sample.subject().drill().opening())
                        .drill());
            case "give the second lunge a count of its own, while the first fencer recovers" -> List.of(onItsOwn(""));
            case "take the touch here, and give the second lunge a count of its own, while the first fencer recovers" ->
                List.of(onItsOwn("Take the touch."));
            default -> List.of();
        };
    }

    /** The position that the refused words name. */
    private String position() {
        Matcher position =
                Pattern.compile("carte|" + String.join("|", POSITIONS)).matcher(words.toLowerCase(Locale.ROOT));
        return position.find() ? position.group() : "";
    }

    private Redraft draft() {
        return Redraft.of(sample.subject().drill());
    }

    private String written(Scene.At turn) {
        List<Step> steps = sample.subject().drill().steps();
        return turn.step() < 0 || turn.step() >= steps.size()
                ? ""
                : steps.get(turn.step()).turn(turn.side()).map(Turn::read).orElse("");
    }

    private Drill turn(Scene.At turn, String text) {
        boolean there = turn.step() >= 0
                && turn.step() < sample.subject().drill().steps().size();
        return there
                ? draft().turn(turn.step(), turn.side(), text).drill()
                : sample.subject().drill();
    }

    private Drill replaced(String other) {
        return turn(at, written(at).replace(words, other));
    }

    private Drill without(String left) {
        String rest = written(at)
                .replaceFirst(",?( and| then)* ?" + Pattern.quote(left), "")
                .strip();
        return turn(at, rest.length() < 2 ? "Hold on guard." : rest);
    }

    private Drill added(String sentence) {
        return turn(at, (written(at) + " " + sentence).strip());
    }

    private Scene.At before() {
        return new Scene.At(at.step() - 1, at.side());
    }

    private Drill before(String first) {
        return replaced(first + ", then " + small(words));
    }

    private Drill parried(String name) {
        String parry = name.startsWith("circular ") || name.startsWith("ceding ")
                ? name.replaceFirst(" ", " parry of ")
                : "parry " + name;
        boolean unmet = finding.rule().equals("attack-unanswered");
        String sentence = parry.substring(0, 1).toUpperCase(Locale.ROOT) + parry.substring(1);
        return unmet ? added(sentence + ".") : replaced(sentence);
    }

    private Drill staying(Scene.At turn) {
        String rest = AWAY.matcher(written(turn)).replaceAll("").strip();
        return turn(turn, rest.length() < 2 ? "Hold on guard." : rest);
    }

    private Drill begun(String measure) {
        String start = sample.subject().drill().start();
        String other =
                start.replaceAll("(?i)(at )?(extension|advance-lunge|lung(e|ing)) distance|out of distance", measure);
        return draft().start(other).drill();
    }

    private Drill onItsOwn(String meanwhile) {
        String rest = written(at).replace(words, "").replaceAll("^[ ,.]*(and|then)? ?", "");
        String left = (meanwhile + " " + rest).strip();
        Turn lunge = Turn.of(words + ".");
        Turn recovery = Turn.of("Recover.");
        boolean leader = at.side() == Side.LEADER;
        Step own = new Step(
                OptionalInt.empty(),
                "",
                Optional.of(leader ? lunge : recovery),
                Optional.of(leader ? recovery : lunge),
                "lunge",
                "Arrive softly.",
                "");
        return draft().turn(at.step(), at.side(), left.isEmpty() ? "Hold on guard." : left)
                .inserted(at.step() + 1, own)
                .drill();
    }

    /** The refused words, sent to another line or place. */
    private String sent(String there) {
        Matcher line = LINE.matcher(words);
        UnaryOperator<String> place = text -> text.replaceFirst(
                "the (head|flank|chest|shoulder|belly|(in|out)side( cheek)?|cheek)|flank|head", there);
        String bare = there.replaceFirst("^the ", "");
        String placed = place.apply(words);
        return line.find()
                ? line.replaceFirst(bare)
                : placed.equals(words) ? words.replaceFirst("(?<= )(in|out)side\\b", "to " + there) : placed;
    }

    /** The line that the finding tells as the one where it would go. */
    private String lineTold() {
        Matcher line = Pattern.compile("(?:ends in|goes to|touch in) (the (?:high|low) (?:in|out)side line)")
                .matcher(finding.what().english());
        return line.find() ? line.group(1) : "";
    }

    /** A stroke of another name in the line of the refused one, with its feet. */
    private String composed(String name) {
        Matcher by = Pattern.compile("(?i)by (a |the )?(disengage|cut-over|one-two|double)")
                .matcher(words);
        if (by.find()) {
            return by.replaceFirst("by " + small(name.replaceFirst("Riposte by ", "")));
        }
        Matcher line = Pattern.compile(
                        "(high|low)[ -](inside|outside) line|head|flank|chest|shoulder|belly|(in|out)side("
                                + " cheek)?|cheek")
                .matcher(words);
        String told = words.toLowerCase(Locale.ROOT);
        String steps = told.contains("advance") ? "Advance, then " : "";
        String stroke = told.contains("feint") ? "Feint of " + small(name) : name;
        Matcher arm = Pattern.compile("forearm|hand|wrist|elbow").matcher(told);
        String place = line.find() ? line.group() : "";
        String limb = arm.find() && place.contains(" ") ? arm.group() + ", " : "";
        String there = place.isEmpty() ? "" : " to the " + limb + place;
        return (steps.isEmpty() ? stroke : steps + small(stroke))
                + there
                + (told.contains("lung") ? " with a lunge" : "");
    }
}
