/**
 * The kinds of definition file: for each the keys that it may hold and how they become values. Start at
 * {@link fayline.store.file.kind.Kind}. Reading is forgiving: what was refused takes a stand-in, so that everything else can
 * still be checked; nothing computed from stand-ins leaves the reader.
 */
@NullMarked
package fayline.store.file.kind;

import org.jspecify.annotations.NullMarked;
