/**
 * Things with ids, in the order in which they are written. Start at {@link fayline.flow.project.catalog.Catalog}. What the
 * things are does not belong here.
 */
@NullMarked
package fayline.flow.project.catalog;

import org.jspecify.annotations.NullMarked;
