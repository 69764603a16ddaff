/** A figure back to its inputs, formula and source. Start at {@link fayline.app.web.why.WhyPage}. */
@NullMarked
package fayline.app.web.why;

import org.jspecify.annotations.NullMarked;
