package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.published.GroupCells;
import org.drillwright.plan.published.Publication;
import org.drillwright.plan.published.PublishedClass;
import org.drillwright.plan.published.PublishedTerm;
import org.drillwright.plan.published.PublishedText;
import org.junit.jupiter.api.Test;

class PublishedReaderTest {

    private static final PublishedTerm TERM = new PublishedTerm(
            "autumn",
            PlanMark.read("K7QM-J"),
            "Autumn: \"the first\"",
            "",
            Optional.of(ZoneId.of("Europe/Paris")),
            Optional.of(LocalDate.of(2026, 12, 2)),
            List.of(
                    new PublishedClass(
                            "c1",
                            LocalDate.of(2026, 9, 2),
                            Optional.of(LocalTime.of(19, 0)),
                            75,
                            List.of(new GroupCells("no", List.of("a"), List.of("b", "c")))),
                    new PublishedClass("c2", LocalDate.of(2026, 9, 9), Optional.empty(), 60, List.of())));

    private static final Publication PLAN =
            new Publication(TERM.mark(PlanMark.SHORT), Instant.parse("2026-09-01T18:00:00Z"), TERM);

    private static Reading<Publication> read(String text) {
        return PublishedReader.read("p.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void what_is_written_is_read_back() {
        Reading<Publication> reading = read(PublishedText.file(PLAN));
        assertEquals(List.of(), reading.findings());
        assertEquals(Optional.of(PLAN), reading.value());
        assertTrue(TERM.fits(PLAN.mark()));
    }

    @Test
    void a_changed_file_does_not_fit_its_mark() {
        Publication other =
                read(PublishedText.file(PLAN).replace("75", "60")).value().orElseThrow();
        assertFalse(other.term().fits(other.mark()));
    }

    @Test
    void when_it_was_published_changes_no_mark() {
        assertEquals(
                PLAN.mark(),
                new Publication(PLAN.mark(), Instant.EPOCH, TERM).term().mark(PlanMark.SHORT));
    }

    @Test
    void a_file_of_a_later_version_is_refused() {
        assertEquals(
                Optional.empty(),
                read(PublishedText.file(PLAN).replace("published-term: 1", "published-term: 2"))
                        .value());
    }
}
