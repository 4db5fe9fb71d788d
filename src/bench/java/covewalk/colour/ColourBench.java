package covewalk.colour;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** Time of one conversion, over a thousand colours in random order so that no branch can be learnt. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ColourBench {

    private static final int N = 1000;

    private final Robertson robertson = new Robertson();
    private CctDuv[] pairs;
    private Uv[] uvs;

    @Setup
    public void colours() {
        pairs = Sample.pairs(N, 1700, 20_000, 0.05);
        uvs = new Uv[N];
        for (int i = 0; i < N; i++) {
            uvs[i] = pairs[i].toUv();
        }
    }

    @Benchmark
    @OperationsPerInvocation(N)
    public void uvToCctDuv(Blackhole hole) {
        for (Uv uv : uvs) {
            hole.consume(ColourTemperature.of(uv));
        }
    }

    @Benchmark
    @OperationsPerInvocation(N)
    public void cctDuvToUv(Blackhole hole) {
        for (CctDuv pair : pairs) {
            hole.consume(pair.toUv());
        }
    }

    @Benchmark
    @OperationsPerInvocation(N)
    public void robertsonCctDuv(Blackhole hole) {
        for (Uv uv : uvs) {
            hole.consume(robertson.cctDuv(uv.u(), uv.v()));
        }
    }

    @Benchmark
    @OperationsPerInvocation(N)
    public void robertsonCct(Blackhole hole) {
        for (Uv uv : uvs) {
            hole.consume(robertson.cct(uv.u(), uv.v()));
        }
    }
}
