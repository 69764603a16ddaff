package fayline.store.file.picture;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * What a camera writes into a picture about itself and the moment, as Exif 2.32 [exif232] sections 4.6.2 and 4.6.3 lay it out:
 * directories of fields that point at values. Where it was taken is a directory of its own, named by field 0x8825; it is
 * overwritten with noughts and its field taken out. The maker's own block, field 0x927c, goes with it, since nobody can say what it
 * holds. Every other field stays at its place, byte for byte.
 */
final class ExifBlock {
    private static final int LOCATION = 0x8825;
    private static final int MAKERS_OWN = 0x927c;
    private static final int SHOT = 0x8769;
    private static final int INTEROPERABILITY = 0xa005;
    private static final int ORIENTATION = 0x0112;
    private static final int FIELD = 12;
    private static final int MOST_DIRECTORIES = 8;
    /** Bytes of one value of each type, from type 1 on. */
    private static final int[] WIDTHS = {1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};

    private final byte[] b;
    private final boolean little;

    private ExifBlock(byte[] b, boolean little) {
        this.b = b;
        this.little = little;
    }

    /** A block that points where it does not reach. */
    private static final class Broken extends Exception {
        private static final long serialVersionUID = 1L;
    }

    private static Optional<ExifBlock> of(byte[] block) {
        boolean little = Bytes.says(block, 0, "II*\0");
        if (block.length < 8 || (!little && !Bytes.says(block, 0, "MM\0*"))) {
            return Optional.empty();
        }
        return Optional.of(new ExifBlock(block.clone(), little));
    }

    /** Which way up the picture is, from 1 (as stored) to 8; 1 where nothing readable is said. */
    static int orientation(byte[] block) {
        return of(block).map(ExifBlock::orientation).orElse(1);
    }

    private int orientation() {
        try {
            int field = field(ORIENTATION);
            int said = field == 0 ? 1 : u16(field + 8);
            return said >= 1 && said <= 8 ? said : 1;
        } catch (Broken e) {
            return 1;
        }
    }

    /** Whether the block says where the picture was taken. */
    static boolean tellsWhere(byte[] block) {
        return of(block).filter(ExifBlock::tellsWhere).isPresent();
    }

    private boolean tellsWhere() {
        try {
            return field(LOCATION) != 0;
        } catch (Broken e) {
            return false;
        }
    }

    /** Where a field of the first directory stands; nought where it has none. */
    private int field(int tag) throws Broken {
        int at = first();
        for (int i = 0; i < fields(at); i++) {
            if (u16(at + 2 + i * FIELD) == tag) {
                return at + 2 + i * FIELD;
            }
        }
        return 0;
    }

    /** The block without where the picture was taken; empty where it cannot be read and so nobody can say what it holds. */
    static Optional<byte[]> withoutLocation(byte[] block) {
        return of(block).flatMap(ExifBlock::withoutLocation);
    }

    private Optional<byte[]> withoutLocation() {
        try {
            Deque<Integer> open = new ArrayDeque<>();
            Set<Integer> seen = new HashSet<>();
            open.add(first());
            while (!open.isEmpty()) {
                int at = open.removeFirst();
                if (at != 0 && seen.add(at)) {
                    if (seen.size() > MOST_DIRECTORIES) {
                        return Optional.empty();
                    }
                    clean(at, open);
                }
            }
            return Optional.of(b);
        } catch (Broken e) {
            return Optional.empty();
        }
    }

    private void clean(int at, Deque<Integer> open) throws Broken {
        int i = 0;
        while (i < fields(at)) {
            int field = at + 2 + i * FIELD;
            int tag = u16(field);
            if (tag == LOCATION) {
                blank(offset(field + 8));
                takeOut(at, i);
            } else if (tag == MAKERS_OWN) {
                blankValue(field);
                takeOut(at, i);
            } else {
                if (tag == SHOT || tag == INTEROPERABILITY) {
                    open.add(offset(field + 8));
                }
                i++;
            }
        }
        open.add(offset(at + 2 + fields(at) * FIELD));
    }

    /** Overwrites a directory and the values it points at. */
    private void blank(int at) throws Broken {
        int n = fields(at);
        for (int i = 0; i < n; i++) {
            blankValue(at + 2 + i * FIELD);
        }
        Arrays.fill(b, at, at + 2 + n * FIELD, (byte) 0);
    }

    private void blankValue(int field) throws Broken {
        int type = u16(field + 2);
        long count = u32(field + 4);
        long length = type >= 1 && type <= WIDTHS.length ? count * WIDTHS[type - 1] : count;
        if (length > 4) {
            int from = offset(field + 8);
            if (length > b.length - from) {
                throw new Broken();
            }
            Arrays.fill(b, from, (int) (from + length), (byte) 0);
        }
    }

    /** Takes a field out of its directory: those behind it move up, with the pointer to the next directory. */
    private void takeOut(int at, int i) throws Broken {
        int n = fields(at);
        if (i >= n) {
            throw new Broken();
        }
        int field = at + 2 + i * FIELD;
        int last = at + 2 + n * FIELD + 4;
        System.arraycopy(b, field + FIELD, b, field, last - field - FIELD);
        Arrays.fill(b, last - FIELD, last, (byte) 0);
        b[at + (little ? 0 : 1)] = (byte) (n - 1);
        b[at + (little ? 1 : 0)] = (byte) ((n - 1) >> 8);
    }

    private int first() throws Broken {
        return offset(4);
    }

    /** How many fields a directory has; all of them, and the pointer behind them, lie within the block. */
    private int fields(int at) throws Broken {
        int n = u16(at);
        if (at < 8 || at + 2L + (long) n * FIELD + 4 > b.length) {
            throw new Broken();
        }
        return n;
    }

    private int offset(int at) throws Broken {
        long offset = u32(at);
        if (offset > b.length) {
            throw new Broken();
        }
        return (int) offset;
    }

    private int u16(int at) throws Broken {
        if (at < 0 || at + 2 > b.length) {
            throw new Broken();
        }
        return Bytes.u16(b, at, little);
    }

    private long u32(int at) throws Broken {
        if (at < 0 || at + 4 > b.length) {
            throw new Broken();
        }
        return Bytes.u32(b, at, little);
    }
}
