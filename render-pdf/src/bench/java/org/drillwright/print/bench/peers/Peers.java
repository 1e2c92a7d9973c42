package org.drillwright.print.bench.peers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** All comparisons in one run: {@code Peers ROUNDS}. {@code -Dlarge} is the size of the large school. With {@code -Dupdate} the figures go into docs/peers.md. */
public final class Peers {

    private static final String MARK = "<!-- figures -->\n";
    private static final int FIFTY = 50;

    private Peers() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Bench bench = Bench.of(Integer.parseInt(args[0]));
        Page page = new Page();
        page.line(Machine.described(bench.rounds()));
        CopiedSchool example =
                CopiedSchool.of(bench.example(), bench.file("example"), CopiedSchool.drillsIn(bench.example()));
        CopiedSchool fifty = CopiedSchool.of(bench.example(), bench.file("fifty"), FIFTY);
        CopiedSchool large = CopiedSchool.of(
                bench.example(), bench.file("large"), Integer.parseInt(System.getProperty("large", "1000")));
        CopiedSchool one = CopiedSchool.one(bench.example(), bench.file("one"));
        StartFigures.measure(bench, page, one, fifty);
        CheckPeers.compare(bench, page, List.of(example, large));
        CardPeers.compare(bench, page, one, example, large);
        page.line("");
        page.line(Machine.busy("At the end"));
        write(bench, page.text());
    }

    private static void write(Bench bench, String figures) throws IOException {
        Files.writeString(bench.sources().resolve("target/peers/figures.md"), figures);
        if (Boolean.getBoolean("update")) {
            Path docs = bench.sources().resolve("docs/peers.md");
            String[] parts = Files.readString(docs).split(MARK, -1);
            if (parts.length != 3) {
                throw new IOException(docs + " has not two marks for its figures");
            }
            Files.writeString(docs, parts[0] + MARK + figures + MARK + parts[2]);
        }
    }
}
