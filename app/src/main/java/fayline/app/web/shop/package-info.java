/**
 * Pages that change the definition: its files as text, and forms for what changes weekly. Start at {@link
 * fayline.app.web.shop.DefinitionPage}. Every save is one entry.
 */
@NullMarked
package fayline.app.web.shop;

import org.jspecify.annotations.NullMarked;
