package org.drillwright.print.bench.peers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.bench.peers.work.OurCheck;
import org.drillwright.print.bench.peers.work.SchemaCheck;

/** The whole check of a school beside validators that put the same files to the schema which the program writes. */
final class CheckPeers {

    private static final String OURS = "Drillwright, whole check";
    private static final String NETWORKNT = "networknt";
    private static final String AJV = "ajv";

    private final Bench bench;
    private final Page page;
    private final Path schema;
    private final Optional<Path> script;

    private CheckPeers(Bench bench, Page page, Path schema, Optional<Path> script) {
        this.bench = bench;
        this.page = page;
        this.schema = schema;
        this.script = script;
    }

    static void compare(Bench bench, Page page, List<CopiedSchool> schools) throws IOException, InterruptedException {
        page.line("");
        page.line("### Checking");
        page.line("");
        Path schema = bench.file("schema.json");
        new Cold("schema", bench.work(), bench.program("schema", "--out", schema)).run();
        CheckPeers peers = new CheckPeers(bench, page, schema, script(bench, page));
        peers.versions();
        peers.proof();
        for (CopiedSchool school : schools) {
            peers.compare(school);
        }
    }

    /** The validator for Node, installed beside its script. */
    private static Optional<Path> script(Bench bench, Page page) throws IOException, InterruptedException {
        Optional<Tool> node = page.tool("node");
        Optional<Tool> npm = page.tool("npm");
        if (node.isEmpty() || npm.isEmpty()) {
            return Optional.empty();
        }
        Path folder = Files.createDirectories(bench.file("node"));
        Path sources = bench.sources().resolve("src/bench/node");
        for (String file : List.of("package.json", "package-lock.json", "validate.mjs")) {
            Files.copy(sources.resolve(file), folder.resolve(file));
        }
        new Cold("npm", folder, List.of(npm.get().path().toString(), "ci", "--no-audit", "--no-fund", "--silent"))
                .run();
        return Optional.of(folder.resolve("validate.mjs"));
    }

    private void versions() throws IOException, InterruptedException {
        page.line("networknt json-schema-validator " + bench.jars().version("json-schema-validator")
                + " with Jackson YAML " + bench.jars().version("jackson-dataformat-yaml") + ".");
        if (script.isPresent()) {
            page.line("ajv " + version("ajv") + " with yaml " + version("yaml") + " on Node "
                    + Tool.named("node").orElseThrow().version() + ".");
        }
    }

    private String version(String library) throws IOException {
        String lock = Files.readString(
                bench.file("node").resolve("node_modules").resolve(library).resolve("package.json"));
        return lock.replaceFirst("(?s).*?\"version\": \"([^\"]+)\".*", "$1");
    }

    /** All refuse a key that does not exist; only the program sees a parry of the wrong line. */
    private void proof() throws IOException, InterruptedException {
        String sound = Files.readString(bench.example().resolve("intermediate/parry-of-quarte.yaml"));
        page.table("contender", "accepts a sound drill", "a key misspelt", "a parry of the wrong line");
        List<Path> schools = List.of(
                school("sound", sound),
                school("key", sound.replaceFirst("(?m)^repeat:", "repeats:")),
                school("parry", sound.replaceFirst("Parry quarte", "Parry sixte")));
        for (int at = 0; at < contenders(schools.get(0)).size(); at++) {
            List<String> row = new ArrayList<>();
            for (Path school : schools) {
                Contender one = contenders(school).get(at);
                row.add(one.run().result().equals("1") ? "accepted" : "refused");
            }
            page.row(contenders(schools.get(0)).get(at).name(), row.get(0), row.get(1), row.get(2));
        }
    }

    private Path school(String name, String drill) throws IOException {
        Path folder = Files.createDirectories(bench.file("proof-" + name));
        Files.writeString(folder.resolve("drill.yaml"), drill.replaceFirst("(?m)^needs:.*\n", ""));
        return folder;
    }

    private List<Contender> contenders(Path school) {
        return commands(school).stream()
                .map(one -> {
                    List<String> once = new ArrayList<>(one.command());
                    once.add("once");
                    return (Contender) new Cold(one.name(), bench.work(), once);
                })
                .toList();
    }

    private List<Cold> commands(Path school) {
        List<Cold> commands = new ArrayList<>();
        commands.add(new Cold(OURS, bench.work(), Bench.java(bench.jars().ours(), OurCheck.class, school)));
        String validator = bench.jars().of("json-schema-validator", "jackson-", "snakeyaml", "slf4j-api", "itu");
        commands.add(new Cold(NETWORKNT, bench.work(), Bench.java(validator, SchemaCheck.class, schema, school)));
        script.ifPresent(file -> commands.add(new Cold(
                AJV,
                bench.work(),
                List.of(
                        Tool.named("node").orElseThrow().path().toString(),
                        file.toString(),
                        schema.toString(),
                        school.toString()))));
        return commands;
    }

    private void compare(CopiedSchool school) throws IOException, InterruptedException {
        boolean large = school.drills() > 100;
        page.table(school.drills() + " drills", "ms a drill", "theirs to ours, by the clock", "by the processor");
        List<Contender> warm = new ArrayList<>();
        try {
            for (Cold one : commands(school.folder())) {
                warm.add(Warm.start(
                        one.name() + ", warm", bench.work(), one.command(), large ? 1 : 10, large ? 2 : 100));
            }
            rows(Turns.of(warm, bench.rounds()), school);
        } finally {
            warm.forEach(Contender::close);
        }
        List<Contender> cold = new ArrayList<>(List.of(
                new Cold("Drillwright, `check`", bench.work(), bench.program("check", "--school", school.folder()))));
        contenders(school.folder()).stream()
                .skip(1)
                .forEach(one -> cold.add(new Cold(one.name() + ", command", bench.work(), ((Cold) one).command())));
        rows(Turns.of(cold, bench.rounds()), school);
    }

    private void rows(Turns turns, CopiedSchool school) {
        for (String name : turns.names()) {
            String result = turns.result(name);
            if (!result.startsWith(String.valueOf(school.drills()))) {
                throw new IllegalStateException(name + " found only " + result + " of " + school.drills() + " sound");
            }
            page.row(
                    name,
                    turns.clock(name).each(school.drills()),
                    turns.clockRatio(name).times(),
                    turns.processorRatio(name).times());
        }
    }
}
