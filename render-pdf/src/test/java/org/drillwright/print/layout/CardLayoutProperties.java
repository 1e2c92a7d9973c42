package org.drillwright.print.layout;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.print.Drills;
import org.drillwright.print.Example;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Family;

/** What holds of every card, whatever the drill. */
class CardLayoutProperties {

    @Provide
    Arbitrary<Drill> drills() {
        return DrillArbitraries.drills();
    }

    @Provide
    Arbitrary<Language> languages() {
        return Arbitraries.of(Language.all());
    }

    @Property(tries = 150)
    void nothing_is_cut_off_dropped_or_overlapping(
            @ForAll("drills") Drill drill,
            @ForAll CardSize size,
            @ForAll("languages") Language language,
            @ForAll boolean draft,
            @ForAll boolean pictures) {
        CardSubject plain = draft ? Drills.draft(drill) : Drills.subject(drill);
        CardSubject subject = pictures ? pictured(plain) : plain;
        Laid laid = CardLayout.lay(List.of(subject), size, Labels.in(language), Family.dejaVu());
        WholeCards.of(subject, laid, size);
    }

    /** With the pictures of some played drill: as many counts have one as that drill has. */
    private static CardSubject pictured(CardSubject plain) {
        return new CardSubject(
                plain.drill(),
                plain.school(),
                plain.place(),
                plain.draft(),
                plain.footerRemarks(),
                Optional.of(Example.drill("double-against-the-circle").replay()));
    }
}
