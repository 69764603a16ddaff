package fayline.store.file.archive;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;

/** Hashes what is read, and ends once more was read than is allowed. */
final class CountedStream extends FilterInputStream {
    private final MessageDigest sha = RecordArchive.sha256();
    private final long most;
    private long count;

    CountedStream(InputStream in, long most) {
        super(in);
        this.most = most;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        if (isOver()) {
            return -1;
        }
        int read = super.read(into, from, length);
        if (read > 0) {
            count += read;
            sha.update(into, from, read);
        }
        return read;
    }

    boolean isOver() {
        return count > most;
    }

    long count() {
        return count;
    }

    byte[] digest() {
        return sha.digest();
    }
}
