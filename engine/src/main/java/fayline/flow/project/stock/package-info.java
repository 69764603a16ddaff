/** What is bought. Start at {@link fayline.flow.project.stock. materials, mixed systems, lots, deliveries:Material}. Nothing computed belongs here. */
@NullMarked
package fayline.flow.project.stock;

import org.jspecify.annotations.NullMarked;
