package org.drillwright.editing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.check.jury.Rules;
import org.drillwright.model.Side;
import org.drillwright.phrase.Replay;
import org.drillwright.read.ReadingRule;
import org.drillwright.schema.FileForm;
import org.drillwright.school.FileKind;
import org.drillwright.school.SchoolFolder;
import org.drillwright.source.Finding;
import org.drillwright.source.SourceFile;
import org.drillwright.wording.Message;

/** What is told of the words under the pointer: what was found in them, how they were read, what their key is for. */
public final class Hover {

    private static final Pattern TURN = Pattern.compile("steps/(\\d+)/(leader|follower)(/means|/say)?");

    private Hover() {}

    /** The rules that found something in the words at an offset, the innermost first. */
    public static List<HoverText> rules(List<Finding> findings, int offset) {
        List<HoverText> told = new ArrayList<>();
        findings.stream()
                .filter(finding -> finding.span().start() <= offset
                        && offset <= finding.span().end())
                .sorted(Comparator.comparingInt(finding -> finding.span().length()))
                .forEach(finding -> why(finding.rule())
                        .ifPresent(why ->
                                told.add(new HoverText(finding.span(), Message.plain(finding.rule()), List.of(why)))));
        return told.stream().distinct().toList();
    }

    private static Optional<Message> why(String rule) {
        Optional<Message> judged = Rules.text(rule).map(Hover::told);
        return judged.or(() -> Stream.of(ReadingRule.values())
                .filter(one -> one.id().equals(rule))
                .map(one -> one.asks().then(one.why()))
                .findFirst());
    }

    private static Message told(RuleText rule) {
        return rule.asks().then(rule.why());
    }

    /** How the words of a drill at an offset were read, and how they leave the two. */
    public static Optional<HoverText> reading(Subject subject, int offset) {
        return CaretPlace.at(subject.file(), offset)
                .filter(spot -> !spot.onKey())
                .flatMap(spot -> reading(subject, spot));
    }

    private static Optional<HoverText> reading(Subject subject, CaretPlace spot) {
        Matcher turn = TURN.matcher(spot.path().text());
        if (turn.matches()) {
            int step = Integer.parseInt(turn.group(1));
            return Optional.of(TurnTold.turn(subject, step, side(turn.group(2)), spot.span()));
        }
        Replay replay = subject.replay();
        return switch (spot.path().text()) {
            case "opening" -> Optional.of(TurnTold.part(subject, "opening", replay.opened(), spot.span()));
            case "start" -> Optional.of(TurnTold.part(subject, "start", replay.start(), spot.span()));
            case "closing" -> Optional.of(TurnTold.part(subject, "closing", replay.closed(), spot.span()));
            default -> Optional.empty();
        };
    }

    private static Side side(String word) {
        return word.equals(Side.LEADER.word()) ? Side.LEADER : Side.FOLLOWER;
    }

    /** Which drill, or who, is named at an offset. */
    public static Optional<HoverText> name(SchoolFolder school, FileKind kind, SourceFile file, int offset) {
        return NameIndex.DRILLS
                .at(kind, file, offset)
                .flatMap(named -> NameTold.drill(school, named))
                .or(() -> NameIndex.PEOPLE.at(kind, file, offset).flatMap(named -> NameTold.person(school, named)));
    }

    /** What the key at an offset, or that of the value there, is for. */
    public static Optional<HoverText> key(SourceFile file, FileForm form, int offset) {
        return CaretPlace.at(file, offset)
                .flatMap(spot -> form.told(spot.path())
                        .map(told -> new HoverText(
                                spot.span(), Message.plain(spot.path().text()), List.of(told))));
    }
}
