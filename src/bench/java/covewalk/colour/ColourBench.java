package covewalk.colour;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * Time of one conversion, over colours in random order. A few thousand colours are learnt by the processor's branch
 * prediction, so that a search costs nothing; the smaller number shows that, the larger what new readings cost.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 2, jvmArgs = "-XX:+UseSerialGC") // one thread for all, so that a busy machine disturbs less
public class ColourBench {

    private static final int N = 1 << 15;
    private static final int SLOW = 16; // colours for the slow way

    /** How many colours there are before they come again. */
    @Param({"1024", "32768"})
    private int different;

    private final Robertson robertson = new Robertson();
    private final Ohno ohno = new Ohno();
    private final ExactSearch exact = new ExactSearch();
    private CctDuv[] pairs;
    private Uv[] uvs;

    @Setup
    public void colours() {
        CctDuv[] sample = Sample.pairs(different, 1700, 20_000, 0.05);
        pairs = new CctDuv[N];
        uvs = new Uv[N];
        for (int i = 0; i < N; i++) {
            pairs[i] = sample[i % different];
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

    @Benchmark
    @OperationsPerInvocation(N)
    public void ohnoCctDuv(Blackhole hole) {
        for (Uv uv : uvs) {
            hole.consume(ohno.cctDuv(uv.u(), uv.v()));
        }
    }

    /** Newton's method on the sums themselves, from a start that is 1 % off. */
    @Benchmark
    @OperationsPerInvocation(SLOW)
    public void sumsCctDuv(Blackhole hole) {
        for (int i = 0; i < SLOW; i++) {
            hole.consume(exact.nearest(uvs[i], 1.01e6 / pairs[i].cctK()));
        }
    }
}
