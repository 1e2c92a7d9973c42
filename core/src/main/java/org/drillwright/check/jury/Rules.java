package org.drillwright.check.jury;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillwright.check.FolderRule;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.courtesy.SaluteMissing;
import org.drillwright.check.fencing.AcrossTheBlades;
import org.drillwright.check.fencing.AttackIntoClosedLine;
import org.drillwright.check.fencing.AttackUnanswered;
import org.drillwright.check.fencing.BladeNotThere;
import org.drillwright.check.fencing.BothLungeAtOnce;
import org.drillwright.check.fencing.FoibleAgainstForte;
import org.drillwright.check.fencing.FootBeforeHand;
import org.drillwright.check.fencing.LungeNotRecovered;
import org.drillwright.check.fencing.MaskOffInReach;
import org.drillwright.check.fencing.NoBladeInHand;
import org.drillwright.check.fencing.NotBackAtStart;
import org.drillwright.check.fencing.NotFullyChecked;
import org.drillwright.check.fencing.NothingToRenew;
import org.drillwright.check.fencing.OffTarget;
import org.drillwright.check.fencing.OpeningLeadsElsewhere;
import org.drillwright.check.fencing.ParryMisses;
import org.drillwright.check.fencing.RearFootPasses;
import org.drillwright.check.fencing.RiposteWithoutParry;
import org.drillwright.check.fencing.TooFarOrTooNear;
import org.drillwright.check.fencing.TurnsAtOdds;
import org.drillwright.check.fencing.WrongWayPastBlade;
import org.drillwright.check.folder.BrokenSet;
import org.drillwright.check.folder.InNoSet;
import org.drillwright.check.folder.OwnWordWithoutEffect;
import org.drillwright.check.folder.SamePrintMark;
import org.drillwright.check.folder.SameTitleInSet;
import org.drillwright.check.folder.TwinDrills;
import org.drillwright.check.form.AcceptWithoutEffect;
import org.drillwright.check.form.ChoiceLeftOpen;
import org.drillwright.check.form.HandsAtOdds;
import org.drillwright.check.form.NeedsCannotBeMet;
import org.drillwright.check.form.NumberOutOfOrder;
import org.drillwright.check.form.PartnerNotTold;
import org.drillwright.check.form.SayUnlikeMeans;
import org.drillwright.check.form.TooMuchInACount;
import org.drillwright.check.form.TurnMissing;
import org.drillwright.check.form.TurnReadTwoWays;
import org.drillwright.check.form.WordsUnread;
import org.drillwright.check.safety.BeyondTheLevel;
import org.drillwright.check.safety.GearMissing;
import org.drillwright.check.safety.NoTrueDistance;
import org.drillwright.check.safety.SafetyNoteMissing;

/** The rules that are in force: kept by hand, in the order in which people meet them. */
public final class Rules {

    /** What is asked of each drill. */
    public static final List<Rule> ALL = List.of(
            new TurnMissing(),
            new HandsAtOdds(),
            new PartnerNotTold(),
            new NumberOutOfOrder(),
            new SaluteMissing(),
            new GearMissing(),
            new NoTrueDistance(),
            new SafetyNoteMissing(),
            new ChoiceLeftOpen(),
            new TooMuchInACount(),
            new BeyondTheLevel(),
            new NeedsCannotBeMet(),
            new AcceptWithoutEffect(Rules::texts),
            new MaskOffInReach(),
            new TooFarOrTooNear(),
            new FootBeforeHand(),
            new WrongWayPastBlade(),
            new AttackIntoClosedLine(),
            new ParryMisses(),
            new AttackUnanswered(),
            new RiposteWithoutParry(),
            new NothingToRenew(),
            new BladeNotThere(),
            new FoibleAgainstForte(),
            new AcrossTheBlades(),
            new LungeNotRecovered(),
            new BothLungeAtOnce(),
            new OffTarget(),
            new RearFootPasses(),
            new OpeningLeadsElsewhere(),
            new NotBackAtStart(),
            new TurnsAtOdds(),
            new NoBladeInHand(),
            new TurnReadTwoWays(),
            new SayUnlikeMeans(),
            new WordsUnread(),
            new NotFullyChecked());

    /** What is asked of the folder as a whole. */
    public static final List<FolderRule> OF_THE_FOLDER = List.of(
            new BrokenSet(),
            new InNoSet(),
            new SameTitleInSet(),
            new TwinDrills(),
            new SamePrintMark(),
            new OwnWordWithoutEffect());

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
