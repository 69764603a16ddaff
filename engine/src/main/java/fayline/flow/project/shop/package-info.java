/** The shop. Start at {@link fayline.flow.project.shop. people and their hours, stands, ports, moulds:Shop}. Nothing computed belongs here. */
@NullMarked
package fayline.flow.project.shop;

import org.jspecify.annotations.NullMarked;
