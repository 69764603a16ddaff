/** What the work costs, for those who may see it. Start at {@link fayline.app.web.costs.CostsPage}. */
@NullMarked
package fayline.app.web.costs;

import org.jspecify.annotations.NullMarked;
