package org.drillwright.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillwright.check.courtesy.SaluteBothEnds;
import org.drillwright.check.folder.NoTwins;
import org.drillwright.check.folder.OneTitleASet;
import org.drillwright.check.folder.SetWhole;
import org.drillwright.check.form.AcceptKnown;
import org.drillwright.check.form.BothTurns;
import org.drillwright.check.form.NeedsKnown;
import org.drillwright.check.form.NoChoice;
import org.drillwright.check.form.NumberedInOrder;
import org.drillwright.check.form.OneThingACount;
import org.drillwright.check.safety.DistanceCue;
import org.drillwright.check.safety.GearNote;
import org.drillwright.check.safety.LevelFit;
import org.drillwright.check.safety.SafetyNote;

/** The rules that are in force: kept by hand, in the order in which people meet them. */
public final class Rules {

    /** What is asked of each drill. */
    public static final List<Rule> ALL = List.of(
            new BothTurns(),
            new NumberedInOrder(),
            new SaluteBothEnds(),
            new GearNote(),
            new DistanceCue(),
            new SafetyNote(),
            new NoChoice(),
            new OneThingACount(),
            new LevelFit(),
            new NeedsKnown(),
            new AcceptKnown());

    /** What is asked of the folder as a whole. */
    public static final List<FolderRule> OF_THE_FOLDER = List.of(new SetWhole(), new OneTitleASet(), new NoTwins());

    private Rules() {}

    /** The texts of all rules. */
    public static List<RuleText> texts() {
        return Stream.concat(
                        ALL.stream().map(Rule::text), OF_THE_FOLDER.stream().map(FolderRule::text))
                .toList();
    }

    /** The text of the rule with that id, if there is one. */
    public static Optional<RuleText> text(String id) {
        return texts().stream().filter(text -> text.id().equals(id)).findFirst();
    }

    public static Set<String> ids() {
        Set<String> ids = new TreeSet<>();
        texts().forEach(text -> ids.add(text.id()));
        return ids;
    }
}
