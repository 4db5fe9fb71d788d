package covewalk.survey.file.convert;

/** Whole rows of a table, and how to write them converted; each block has its own tools, so that several can be done at once. */
record RowBlock(byte[] bytes, int start, int filled) {

    /** What became of a block. */
    record Written(RowBuffer out, long rows, long problems) {
    }

    Written convert(TableHead head, ConvertOptions options) {
        RowCells cells = new RowCells(head.separator());
        RowWriter writer = new RowWriter(head, options);
        RowBuffer out = new RowBuffer();
        long rows = 0;
        int at = start;
        while (at < filled) {
            int end = cells.split(bytes, at, filled, true);
            int next = end + TableHead.lineEndLength(bytes, end, filled);
            if (cells.isBlank()) {
                writer.writeBlank(cells, at, end, out);
            } else {
                writer.write(cells, at, end, out);
                rows++;
            }
            out.add(bytes, end, next);
            at = next;
        }
        return new Written(out, rows, writer.problems());
    }
}
