package org.drillwright.print.command.printing.chosen;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.layout.CardProblem;
import org.drillwright.report.DisplayWidth;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Gathers why drills are not printed, shows the findings behind it, and says how to go on. */
public final class PrintRefusal {

    private final Invocation run;
    private final boolean draft;
    private final Set<String> faulty = new LinkedHashSet<>();
    private final Set<String> lost = new LinkedHashSet<>();
    private final List<Message> sentences = new ArrayList<>();

    private PrintRefusal(Invocation run, boolean draft) {
        this.run = run;
        this.draft = draft;
    }

    /**
     * Begins with drills that have errors, files that cannot be read, and ids that lead nowhere.
     *
     * @param draft whether drills with errors are printed all the same
     */
    public static PrintRefusal of(Invocation run, boolean draft, ChosenDrills picks) {
        PrintRefusal refusal = new PrintRefusal(run, draft);
        refusal.weigh(picks);
        return refusal;
    }

    private void weigh(ChosenDrills picks) {
        for (ChosenDrill pick : picks.faulty()) {
            if (pick.isReadable() && draft) {
                continue;
            }
            (pick.isReadable() ? faulty : lost).add(pick.id());
            show(pick.entry().findings());
        }
        for (String id : picks.absent()) {
            lost.add(id);
            sentences.add(Message.of(PrintRefusal.class, "refusal.is.listed.in.a", id));
        }
    }

    /** A drill with characters that cannot be printed. */
    public void lose(ChosenDrill pick) {
        lost.add(pick.id());
    }

    /** What could not be laid whole. */
    public void weigh(List<CardProblem> problems) {
        for (CardProblem problem : problems) {
            if (problem.kind() == CardProblem.Kind.NOT_PRINTED) {
                lost.add(problem.drill());
                sentences.add(Message.of(PrintRefusal.class, "of.drill", problem.drill(), problem.sentence()));
            }
        }
    }

    /** Shows why. */
    public void show(List<Finding> findings) {
        List<Finding> errors = findings.stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .toList();
        run.show(errors);
    }

    /** Whether nothing is to be printed at all. */
    public boolean stops(int printable) {
        return printable == 0 || !faulty.isEmpty() || (!draft && !lost.isEmpty());
    }

    /** Says what was left out, if anything, and how to go on; whether nothing was. */
    public boolean close() {
        sentences.forEach(run::say);
        if (faulty.isEmpty() && lost.isEmpty()) {
            return true;
        }
        if (draft) {
            run.say(Message.of(PrintRefusal.class, "refusal.not.printed", DisplayWidth.shown(String.join(", ", lost))));
        } else {
            run.say(Message.of(PrintRefusal.class, "refusal.nothing.was.printed.because", names()));
            run.say(Message.of(PrintRefusal.class, "refusal.correct.what.is.shown"));
        }
        return false;
    }

    private String names() {
        Set<String> all = new LinkedHashSet<>(faulty);
        all.addAll(lost);
        return DisplayWidth.shown(String.join(", ", all));
    }
}
