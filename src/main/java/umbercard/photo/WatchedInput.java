package umbercard.photo;

import java.io.IOException;
import javax.imageio.stream.ImageInputStreamImpl;

/** A file's bytes as a decoder takes them; each taking moves the meter, and ends in a cancellation once stopped. */
final class WatchedInput extends ImageInputStreamImpl {
    private final byte[] bytes;
    private final Meter meter;

    WatchedInput(byte[] bytes, Meter meter) {
        this.bytes = bytes;
        this.meter = meter;
    }

    @Override
    public int read() throws IOException {
        checkClosed();
        bitOffset = 0;
        return streamPos < bytes.length ? bytes[(int) streamPos++] & 0xff : -1;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        checkClosed();
        bitOffset = 0;
        if (streamPos >= bytes.length) {
            return -1;
        }
        int count = (int) Math.min(length, bytes.length - streamPos);
        System.arraycopy(bytes, (int) streamPos, into, from, count);
        streamPos += count;
        meter.bytes((double) streamPos / bytes.length);
        return count;
    }

    @Override
    public long length() {
        return bytes.length;
    }
}
