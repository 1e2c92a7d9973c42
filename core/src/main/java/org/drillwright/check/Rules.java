package org.drillwright.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillwright.check.courtesy.SaluteBothEnds;
import org.drillwright.check.fencing.AcrossTheBlades;
import org.drillwright.check.fencing.AnswerToAttack;
import org.drillwright.check.fencing.BackToStart;
import org.drillwright.check.fencing.BladeInHand;
import org.drillwright.check.fencing.BladeIsThere;
import org.drillwright.check.fencing.FullyChecked;
import org.drillwright.check.fencing.HandBeforeFoot;
import org.drillwright.check.fencing.InReach;
import org.drillwright.check.fencing.Lever;
import org.drillwright.check.fencing.LineChange;
import org.drillwright.check.fencing.MaskFirst;
import org.drillwright.check.fencing.NotBothAtOnce;
import org.drillwright.check.fencing.OnTarget;
import org.drillwright.check.fencing.OpenLine;
import org.drillwright.check.fencing.OpeningLeadsOn;
import org.drillwright.check.fencing.ParryCloses;
import org.drillwright.check.fencing.RearFootStays;
import org.drillwright.check.fencing.RecoverFirst;
import org.drillwright.check.fencing.RiposteAfterParry;
import org.drillwright.check.fencing.SomethingToRenew;
import org.drillwright.check.fencing.TurnsAgree;
import org.drillwright.check.folder.InASet;
import org.drillwright.check.folder.NoTwins;
import org.drillwright.check.folder.OneMark;
import org.drillwright.check.folder.OneTitleASet;
import org.drillwright.check.folder.OwnWordsWork;
import org.drillwright.check.folder.SetWhole;
import org.drillwright.check.form.AcceptKnown;
import org.drillwright.check.form.BothTurns;
import org.drillwright.check.form.HandsAgree;
import org.drillwright.check.form.NeedsKnown;
import org.drillwright.check.form.NoChoice;
import org.drillwright.check.form.NumberedInOrder;
import org.drillwright.check.form.OneReading;
import org.drillwright.check.form.OneThingACount;
import org.drillwright.check.form.RanksAgree;
import org.drillwright.check.form.SayAsMeans;
import org.drillwright.check.form.WordsRead;
import org.drillwright.check.safety.DistanceCue;
import org.drillwright.check.safety.GearNote;
import org.drillwright.check.safety.LevelFit;
import org.drillwright.check.safety.SafetyNote;

/** The rules that are in force: kept by hand, in the order in which people meet them. */
public final class Rules {

    /** What is asked of each drill. */
    public static final List<Rule> ALL = List.of(
            new BothTurns(),
            new HandsAgree(),
            new RanksAgree(),
            new NumberedInOrder(),
            new SaluteBothEnds(),
            new GearNote(),
            new DistanceCue(),
            new SafetyNote(),
            new NoChoice(),
            new OneThingACount(),
            new LevelFit(),
            new NeedsKnown(),
            new AcceptKnown(),
            new MaskFirst(),
            new InReach(),
            new HandBeforeFoot(),
            new OpenLine(),
            new ParryCloses(),
            new AnswerToAttack(),
            new RiposteAfterParry(),
            new SomethingToRenew(),
            new BladeIsThere(),
            new Lever(),
            new LineChange(),
            new AcrossTheBlades(),
            new RecoverFirst(),
            new NotBothAtOnce(),
            new OnTarget(),
            new RearFootStays(),
            new OpeningLeadsOn(),
            new BackToStart(),
            new TurnsAgree(),
            new BladeInHand(),
            new OneReading(),
            new SayAsMeans(),
            new WordsRead(),
            new FullyChecked());

    /** What is asked of the folder as a whole. */
    public static final List<FolderRule> OF_THE_FOLDER =
            List.of(new SetWhole(), new InASet(), new OneTitleASet(), new NoTwins(), new OneMark(), new OwnWordsWork());

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
