/**
 * Pages of inspections: stages, visits, findings with what came of them. Start at
 * {@link fayline.app.web.inspect.InspectPage}.
 */
@NullMarked
package fayline.app.web.inspect;

import org.jspecify.annotations.NullMarked;
