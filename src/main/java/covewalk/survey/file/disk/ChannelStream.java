package covewalk.survey.file.disk;

import java.io.IOException;
import java.io.InputStream;

/** A log's channel as a stream from its beginning. */
public final class ChannelStream extends InputStream {

    private final LogChannel channel;
    private long at;

    public ChannelStream(LogChannel channel) {
        this.channel = channel;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        byte[] bytes = channel.read(at, length);
        System.arraycopy(bytes, 0, into, offset, bytes.length);
        at += bytes.length;
        return bytes.length == 0 && length > 0 ? -1 : bytes.length;
    }
}
