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
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;

/** Reads a kept plan, or a copy of one that somebody changed. */
public final class PlanReader {

    /** Said where a plan isn't what its mark stands for. */
    public static final String MARK_RULE = "plan-mark";

    private static final String NONE = "none";

    private final Findings findings;
    private final NodeReader nodes;

    private PlanReader(NodeReader nodes, Findings findings) {
        this.nodes = nodes;
        this.findings = findings;
    }

    /**
     * Reads a plan; whether its mark fits what it says is for the caller to ask.
     *
     * @param name the file's name as it is shown
     */
    public static Reading<Kept> read(String name, byte[] bytes) {
        FileText text = FileText.decode(name, bytes);
        Findings findings = new Findings(text.file());
        findings.addAll(text.findings());
        Optional<Kept> plan = text.usable() ? read(text.file(), findings) : Optional.empty();
        return new Reading<>(findings.hasError() ? Optional.empty() : plan, findings.list());
    }

    private static Optional<Kept> read(SourceFile file, Findings findings) {
        return YamlDocument.compose(file, findings)
                .map(document -> new PlanReader(new NodeReader(document, findings), findings))
                .map(PlanReader::kept);
    }

    private Kept kept() {
        MappingReader keys = nodes.root();
        keys.need("plan");
        form(keys);
        Optional<PlanMark> mark = mark("mark", keys);
        String named = keys.needed("class", ReadingLimits.SHORT_TEXT);
        keys.need("date");
        LocalDate date = keys.date("date").orElse(LocalDate.EPOCH);
        Optional<PlanMark> after = mark("after", keys);
        int worked = keys.wholeNumber("worked", 0, 999).orElse(0);
        Map<String, String> cards = words("drills", keys);
        List<String> here = keys.texts("here", ReadingLimits.SHORT_TEXT);
        List<String> helpers = keys.texts("helpers", ReadingLimits.SHORT_TEXT);
        keys.need("rounds");
        List<List<Group>> groups = new ArrayList<>();
        List<String> drills = keys.groups("rounds", ReadingLimits.ITEMS, round -> drill(round, groups));
        Map<String, String> madeFrom = words("made-from", keys);
        keys.finish();
        List<Round> rounds = new ArrayList<>();
        for (int at = 0; at < Math.min(drills.size(), groups.size()); at++) {
            rounds.add(new Round(at + 1, drills.get(at), groups.get(at)));
        }
        KeptPlan plan = new KeptPlan(named, date, after, worked, cards, here, helpers, rounds);
        return new Kept(mark.orElseGet(() -> plan.mark(PlanMark.SHORT)), plan, madeFrom);
    }

    private void form(Keys keys) {
        int form = keys.wholeNumber("plan", 1, 999).orElse(KeptText.FORM);
        if (form > KeptText.FORM) {
            findings.error(
                    MARK_RULE,
                    at(keys.path().key("plan")),
                    "This plan was kept by a later version of Drillwright (its form is " + form + ").",
                    "Read it with that version.");
        }
    }

    private Optional<PlanMark> mark(String key, Keys keys) {
        Optional<String> written = keys.text(key, ReadingLimits.SHORT_TEXT).filter(text -> !text.equals(NONE));
        Optional<PlanMark> mark = written.flatMap(PlanMark::read);
        if (written.isPresent() && mark.isEmpty()) {
            findings.error(
                    MARK_RULE,
                    at(keys.path().key(key)),
                    "'" + written.get() + "' is no mark of a plan: " + PlanMark.wrongWith(written.get()) + ".",
                    "It stands at the foot of the sheet.");
        }
        return mark;
    }

    private Span at(FieldPath path) {
        return nodes.places().span(path);
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
