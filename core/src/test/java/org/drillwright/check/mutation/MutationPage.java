package org.drillwright.check.mutation;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The page of mutations: what was done, what came of it, and each that was missed with its reason. */
final class MutationPage {

    /** Why a mutant is missed: by operator and drill, {@code *} for any. */
    private static final String ALSO_OUT =
            "The count begins or ends at advance-lunge distance, and that, too, may be called out of distance.";

    private static final Map<String, String> REASONS = Map.ofEntries(
            Map.entry("wrong cue, de-finte-umgehung-sixt", ALSO_OUT),
            Map.entry("wrong cue, es-finta-y-pase", ALSO_OUT),
            Map.entry("wrong cue, foil-evade-then-attack", ALSO_OUT),
            Map.entry("wrong cue, beat-slipped-over-the-blade", ALSO_OUT),
            Map.entry("wrong cue, stop-thrust-drawn-and-parried", ALSO_OUT),
            Map.entry(
                    "*, double-against-the-circle",
                    "A free choice leaves its outcome unknown; that is reported as not fully checked, which"
                            + " this drill accepts."),
            Map.entry(
                    "wrong parry, foil-riposte-one-two",
                    "It answers a feint whose real thrust comes in another line: wherever the hand goes,"
                            + " nothing depends on it."),
            Map.entry(
                    "parry into its circular, foil-riposte-one-two",
                    "It answers a feint whose real thrust comes in another line: wherever the hand goes,"
                            + " nothing depends on it."),
            Map.entry(
                    "off target, feint-head-flank-met-by-the-engaging-guard",
                    "'Under the thigh to the flank' is not fully read, and the count is reported as not fully"
                            + " checked."),
            Map.entry(
                    "off target, sabre-exchange",
                    "A free choice of two targets leaves the target unknown; that is reported as not fully"
                            + " checked, which this drill accepts."),
            Map.entry(
                    "recover too soon, riposte-by-one-two",
                    "A fencer who recovers is in sixte again, so the feint that follows goes into a closed"
                            + " line with no blade to pass; that is noticed on the same count, and a feint need not"
                            + " reach."),
            Map.entry(
                    "drop a recovery, foil-evade-then-attack",
                    "A fencer still in the lunge can parry from it, so the parry two counts later is not a"
                            + " fault; that the two are nearer is noticed on the next count."),
            Map.entry(
                    "swap the side, feint-head-flank-met-by-the-engaging-guard",
                    "'Under the arm' names the flank already; a second target in the same clause is not held"
                            + " against it."),
            Map.entry(
                    "disengage to the same side, it-seconda-cavazione",
                    "'Sopra il ferro' next to the low outside line is not fully read, and the count is"
                            + " reported as not fully checked."),
            Map.entry(
                    "a second action, fr-contre-de-quarte-raconte",
                    "'Il' may be the partner, whose action is then only mentioned; that the two end too near"
                            + " is noticed."),
            Map.entry(
                    "wrong cue, recover-forward",
                    "A short lunge leaves the measure open, so no cue is certainly wrong."));

    private MutationPage() {}

    /** Why a mutant was missed; empty if nobody has said. */
    static String reason(Trial trial) {
        String operator = trial.operator().name() + ", ";
        return Stream.of(operator + trial.drill(), operator + "*", "*, " + trial.drill())
                .map(REASONS::get)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse("");
    }

    static String of(List<Trial> trials) {
        return intro(trials) + table(trials) + operators() + missed(trials);
    }

    private static String intro(List<Trial> trials) {
        long harmful = trials.stream().filter(Trial::isHarmful).count();
        long found =
                trials.stream().filter(Trial::isHarmful).filter(Trial::found).count();
        return """
                # Mutations

                Every correct drill of the tests and of the example school is spoilt in each of the ways below, at every
                place where it applies. A mutant is found when an expected rule reports it on the expected count. It is
                harmless only by its operator's own rule, stated before anything was tried. `MutationTest` compares this
                page with what it finds, in the profile `deep`; with `-Dupdate` it rewrites the page. In every build
                `OperatorsTest` tries each operator at the first places where it applies.

                %d of %d mutants are found; %d more are harmless by rule.

                """.formatted(found, harmful, trials.size() - harmful);
    }

    private static String table(List<Trial> trials) {
        StringBuilder table = new StringBuilder("| operator | mutants | found | harmless |\n|---|---|---|---|\n");
        for (Operator operator : Operators.ALL) {
            List<Trial> own = trials.stream()
                    .filter(trial -> trial.operator().equals(operator))
                    .toList();
            List<Trial> harmful = own.stream().filter(Trial::isHarmful).toList();
            long found = harmful.stream().filter(Trial::found).count();
            table.append("| %s | %d | %d | %d |\n"
                    .formatted(operator.name(), harmful.size(), found, own.size() - harmful.size()));
        }
        return table.toString();
    }

    private static String operators() {
        return Operators.ALL.stream()
                .map(operator -> "\n## " + operator.name() + "\n\n" + operator.spoils() + "\n\nHarmless: "
                        + operator.harmless() + "\n\nNoticed by: " + operator.noticed() + "\n")
                .collect(Collectors.joining());
    }

    private static String missed(List<Trial> trials) {
        return trials.stream()
                .filter(trial -> trial.isHarmful() && !trial.found())
                .map(MutationPage::line)
                .collect(Collectors.joining("", "\n## Not found\n\n", ""));
    }

    private static String line(Trial trial) {
        String said = trial.said().isEmpty() ? "nothing" : String.join(", ", trial.said());
        return "- " + trial.operator().name() + ", `" + trial.drill() + "`, "
                + trial.mutant().place() + " Said instead: " + said + ". " + reason(trial) + "\n";
    }
}
