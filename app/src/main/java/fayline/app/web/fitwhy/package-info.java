/**
 * Where the figures of a fit come from: every input with who read it or which line of the definition says it. Start at
 * {@link fayline.app.web.fitwhy.FitWhyPage}.
 */
@NullMarked
package fayline.app.web.fitwhy;

import org.jspecify.annotations.NullMarked;
