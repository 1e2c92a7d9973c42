package org.drillwright.check.mutation;

import java.util.List;
import java.util.Map;

/** The page of mutations: what was done, what came of it, and each that was missed with its reason. */
final class MutationPage {

    /** Why mutants of an operator are missed, by operator; a missed mutant without a reason fails the test. */
    private static final Map<String, String> REASONS = Map.of();

    private MutationPage() {}

    static String of(List<Trial> trials) {
        StringBuilder page = new StringBuilder();
        List<Trial> harmful = trials.stream().filter(Trial::isHarmful).toList();
        long found = harmful.stream().filter(Trial::found).count();
        page.append("# Mutations\n\n")
                .append(
                        "Every correct drill of the tests and of the example school is spoilt in each of the ways below, at every\n")
                .append(
                        "place where the way fits. A mutant is found when an expected rule speaks at the expected count. It is\n")
                .append(
                        "harmless only by its operator's own rule. The test `MutationTest` writes this page (`-Dupdate`).\n\n")
                .append(found + " of " + harmful.size() + " mutants are found; " + (trials.size() - harmful.size())
                        + " more are harmless by rule.\n\n")
                .append("| operator | mutants | found | harmless |\n|---|---|---|---|\n");
        for (Operator operator : Operators.ALL) {
            List<Trial> own = trials.stream()
                    .filter(trial -> trial.operator().equals(operator))
                    .toList();
            long spoilt = own.stream().filter(Trial::isHarmful).count();
            page.append("| " + operator.name() + " | " + spoilt + " | "
                    + own.stream().filter(Trial::isHarmful).filter(Trial::found).count() + " | " + (own.size() - spoilt)
                    + " |\n");
        }
        for (Operator operator : Operators.ALL) {
            page.append("\n## " + operator.name() + "\n\n" + operator.spoils() + "\n\n")
                    .append("Harmless: " + operator.harmless() + "\n\n")
                    .append("Noticed by: " + operator.noticed() + "\n");
        }
        page.append("\n## Not found\n\n");
        for (Trial trial : trials) {
            if (trial.isHarmful() && !trial.found()) {
                page.append("- " + trial.operator().name() + ", " + trial.drill() + ", "
                        + trial.mutant().place()
                        + " Said instead: " + (trial.said().isEmpty() ? "nothing" : String.join(", ", trial.said()))
                        + ". " + REASONS.getOrDefault(trial.operator().name(), "NO REASON") + "\n");
            }
        }
        return page.toString();
    }
}
