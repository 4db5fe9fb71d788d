package covewalk.survey.file.convert;

import covewalk.survey.Problem;
import covewalk.survey.file.meter.HeaderTable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Converts a table of colours, a row at a time: the same rows with all of x, y, u_prime, v_prime, cct_k and duv, and
 * {@code problem} for rows that cannot be converted. Where a row has several pairs, x and y count, then u' and v', then
 * CCT and Duv. Cells stay as they were typed, formulas too: the file is the user's own. What is added has a point as
 * decimal mark, whatever the separator; UTF-16 comes out as UTF-8, other encodings as they went in.
 */
public final class TableConversion {

    private final HeaderTable names;
    private final ConvertOptions options;
    private final int workers;

    public TableConversion(HeaderTable names, ConvertOptions options) {
        this(names, options, Runtime.getRuntime().availableProcessors());
    }

    TableConversion(HeaderTable names, ConvertOptions options, int workers) {
        this.names = names;
        this.options = options;
        this.workers = Math.min(4, workers);
    }

    /** Reads to the end of {@code in} and closes neither stream. Holds a few blocks of rows in memory and no more. */
    public ConvertResult convert(InputStream in, OutputStream out) throws IOException {
        RowBlocks blocks = new RowBlocks(Utf8Stream.of(in));
        byte[] first = blocks.peek();
        Optional<TableHead> head = TableHead.in(first, blocks.filled(), blocks.last(), names);
        if (head.isEmpty()) {
            String key = blocks.filled() == 0 ? "convert.empty" : "convert.no-header";
            return new ConvertResult(0, 0, Optional.of(Problem.refusal(key)));
        }
        if (head.get().twice().isPresent()) {
            return new ConvertResult(0, 0, Optional.of(Problem.refusal("convert.twice", head.get().twice().get().title())));
        }
        int start = writeHead(first, blocks.filled(), head.get(), out);
        ConvertResult result = convertRows(blocks, start, head.get(), out);
        out.flush();
        return result;
    }

    /** Writes the lines before the header as they are, then the header; returns where the rows begin. */
    private int writeHead(byte[] bytes, int filled, TableHead head, OutputStream out) throws IOException {
        RowBuffer top = new RowBuffer();
        top.add(bytes, 0, head.start());
        new RowWriter(head, options).writeHeader(bytes, top);
        int start = head.end() + TableHead.lineEndLength(bytes, head.end(), filled);
        top.add(bytes, head.end(), start);
        top.writeTo(out);
        return start;
    }

    private ConvertResult convertRows(RowBlocks blocks, int start, TableHead head, OutputStream out) throws IOException {
        ConvertResult result = new ConvertResult(0, 0, Optional.empty());
        Queue<Future<RowBlock.Written>> waiting = new ArrayDeque<>();
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        try {
            Optional<RowBlock> block = blocks.next(head.separator(), start);
            while (block.isPresent() || !waiting.isEmpty()) {
                if (block.isPresent()) {
                    RowBlock rows = block.get();
                    waiting.add(pool.submit(() -> rows.convert(head, options)));
                    block = blocks.next(head.separator(), 0);
                }
                if (block.isEmpty() || waiting.size() > workers) {
                    RowBlock.Written written = done(waiting.remove());
                    written.out().writeTo(out);
                    result = result.plus(written.rows(), written.problems());
                }
            }
        } finally {
            pool.shutdownNow();
        }
        return blocks.tooLong() ? new ConvertResult(result.rows(), result.problems(),
                Optional.of(Problem.refusal("convert.row-too-long", result.rows()))) : result;
    }

    private static RowBlock.Written done(Future<RowBlock.Written> block) throws IOException {
        try {
            return block.get();
        } catch (ExecutionException failed) {
            throw new IllegalStateException("a block of rows could not be converted", failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException("the conversion was stopped", stopped);
        }
    }
}
