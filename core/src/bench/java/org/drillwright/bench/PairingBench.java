package org.drillwright.bench;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.drillwright.plan.pair.Pairing;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.PairingRequest;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Movement;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long a whole class of rounds takes to plan: people, rounds, mode, and whether the drill changes. */
@State(Scope.Benchmark)
@BenchmarkMode(org.openjdk.jmh.annotations.Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 4)
@Measurement(iterations = 4, time = 4)
public class PairingBench {

    static final String[] CASES = {
        "24 12 learning drills",
        "24 12 learning walked",
        "24 12 training one",
        "200 20 learning drills",
        "200 20 learning walked",
        "200 20 training one"
    };

    @Param({
        "24 12 learning drills",
        "24 12 learning walked",
        "24 12 training one",
        "200 20 learning drills",
        "200 20 learning walked",
        "200 20 training one"
    })
    public String asked = CASES[0];

    private Optional<PairingRequest> request = Optional.empty();

    @Setup
    public void invent() {
        request = Optional.of(request(asked));
    }

    static PairingRequest request(String asked) {
        String[] parts = asked.split(" ");
        Mode mode = Arrays.stream(Mode.values())
                .filter(one -> one.word().equals(parts[2]))
                .findFirst()
                .orElseThrow();
        PairingRequest request = InventedClass.of(
                Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), mode, parts[3].equals("one"));
        return parts[3].equals("walked") ? request.moving(Movement.WALK) : request;
    }

    @Benchmark
    public PairingPlan plan() {
        return Pairing.of(request.orElseThrow()).plan();
    }
}
