package org.drillwright.read;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.kept.KeptText;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.Walk;

/** Reads a kept plan, or a copy of one that somebody changed. */
public final class PlanReader {

    /** Said where a plan isn't what its mark stands for. */
    private final NodeReader nodes;

    private PlanReader(NodeReader nodes) {
        this.nodes = nodes;
    }

    /**
     * Reads a plan; whether its mark fits what it says is for the caller to ask.
     *
     * @param name the file's name as it is shown
     */
    public static Reading<Kept> read(String name, byte[] bytes) {
        return NodeReader.reading(name, bytes, () -> FileKeys.NONE, nodes -> new PlanReader(nodes).kept());
    }

    private Kept kept() {
        MappingReader keys = nodes.root();
        PlanHead head = new PlanHead(nodes);
        head.form("plan", KeptText.FORM, keys);
        Optional<PlanMark> mark = head.mark("mark", keys);
        String named = keys.needed("class", ReadingLimits.SHORT_TEXT);
        keys.need("date");
        LocalDate date = keys.date("date").orElse(LocalDate.EPOCH);
        Optional<PlanMark> after = head.mark("after", keys);
        int worked = keys.wholeNumber("worked", 0, 999).orElse(0);
        Map<String, String> cards = words("drills", keys);
        List<String> here = keys.texts("here", ReadingLimits.SHORT_TEXT);
        List<String> helpers = keys.texts("helpers", ReadingLimits.SHORT_TEXT);
        keys.need("rounds");
        List<List<Group>> groups = new ArrayList<>();
        List<String> drills = keys.groups("rounds", ReadingLimits.ITEMS, round -> drill(round, groups));
        List<Walk> walks = keys.groups("walk", ReadingLimits.ITEMS, PlanReader::walk);
        Map<String, String> madeFrom = words("made-from", keys);
        keys.finish();
        List<Round> rounds = new ArrayList<>();
        for (int at = 0; at < Math.min(drills.size(), groups.size()); at++) {
            rounds.add(new Round(at + 1, drills.get(at), groups.get(at)));
        }
        KeptPlan plan =
                new KeptPlan(named, date, after, worked, cards, here, helpers, rounds, sound(walks, rounds.size()));
        return new Kept(mark.orElseGet(() -> plan.mark(PlanMark.SHORT)), plan, madeFrom);
    }

    private static Map<String, String> words(String key, Keys keys) {
        return keys.group(key, all -> all.byName((one, name) -> one.text(name, ReadingLimits.SHORT_TEXT)))
                .orElseGet(LinkedHashMap::new);
    }

    private String drill(Keys round, List<List<Group>> groups) {
        String drill = round.needed("drill", ReadingLimits.SHORT_TEXT);
        groups.add(round.groups("groups", ReadingLimits.ITEMS, PlanReader::group));
        round.finish();
        return drill;
    }

    private static Walk walk(Keys keys) {
        Walk walk = new Walk(
                keys.wholeNumber("from", 1, ReadingLimits.ITEMS).orElse(1),
                keys.wholeNumber("to", 1, ReadingLimits.ITEMS).orElse(0),
                keys.texts("stays", ReadingLimits.SHORT_TEXT),
                keys.texts("moves", ReadingLimits.SHORT_TEXT));
        keys.choice("way", List.of(KeptText.WAY), way -> way);
        keys.finish();
        return walk;
    }

    /** A copy in which somebody changed the lines so that they can't be walked says nothing of walking. */
    private static List<Walk> sound(List<Walk> walks, int rounds) {
        return walks.stream()
                .filter(walk -> walk.from() <= walk.to()
                        && walk.to() <= rounds
                        && !walk.stays().isEmpty()
                        && walk.stays().size() == walk.moves().size())
                .toList();
    }

    private static Group group(Keys keys) {
        keys.need("kind");
        keys.need("people");
        Group group = new Group(
                keys.choice("kind", List.of(Group.Kind.values()), Group.Kind::word)
                        .orElse(Group.Kind.PAIR),
                keys.wholeNumber("post", 1, ReadingLimits.ITEMS).orElse(0),
                keys.texts("people", ReadingLimits.SHORT_TEXT),
                keys.text("helper", ReadingLimits.SHORT_TEXT),
                keys.text("eyes", ReadingLimits.SHORT_TEXT),
                keys.text("middle", ReadingLimits.SHORT_TEXT));
        keys.finish();
        return group;
    }
}
