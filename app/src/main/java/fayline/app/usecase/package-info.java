/**
 * What the program does, one use case a class, over the stores and the engine. Start at
 * {@link fayline.app.usecase.ReadDefinition}. Wording, layout and requests do not belong here.
 */
@NullMarked
package fayline.app.usecase;

import org.jspecify.annotations.NullMarked;
