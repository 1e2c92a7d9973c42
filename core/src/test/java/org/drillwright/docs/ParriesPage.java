package org.drillwright.docs;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Position;
import org.drillwright.phrase.ParryTable;
import org.drillwright.terms.Terms;

/** The page of the parry tables. */
final class ParriesPage {

    private static final List<Weapon> WEAPONS = List.of(Weapon.FOIL, Weapon.EPEE, Weapon.SABRE);

    private ParriesPage() {}

    static String write() {
        StringBuilder page = new StringBuilder();
        page.append("# Which line each position closes\n\n")
                .append(
                        "This page is made from the parry table. A row marked *differs* is one on which schools or sources")
                .append(
                        " differ: a parry that\nmisses by it is a warning, not an error. A school replaces rows in school.yaml:")
                .append(" `parries: {foil: {prime: low inside}}`.\n")
                .append("Lines are named from the person attacked.\n");
        for (Weapon weapon : WEAPONS) {
            page.append("\n## ").append(weapon.word()).append("\n\n| position | closes | |\n|---|---|---|\n");
            ParryTable table = ParryTable.of(weapon, Map.of());
            for (Position position : Position.values()) {
                ParryTable.Row row = table.row(position);
                String lines = row.lines().stream()
                        .sorted()
                        .map(line -> Terms.of(line).english())
                        .collect(Collectors.joining(" or "));
                page.append("| ")
                        .append(position.word())
                        .append(" | ")
                        .append(lines)
                        .append(" | ")
                        .append(row.firm() ? "" : "differs")
                        .append(" |\n");
            }
        }
        return page.toString();
    }
}
