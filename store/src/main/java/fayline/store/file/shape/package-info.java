/**
 * What each kind of definition file may hold: keys, values, units. One description serves the reader, the JSON Schemas and
 * the page in {@code docs}. Start at {@link fayline.store.file.shape.Shape}. Whether a reference exists does not belong here.
 */
@NullMarked
package fayline.store.file.shape;

import org.jspecify.annotations.NullMarked;
