/**
 * The book of what was built as it was built: of a part, an assembly or the whole, as the record holds it up to an entry. Start
 * at {@link fayline.app.usecase.book.MakeBook}. How it looks on paper does not belong here.
 */
@NullMarked
package fayline.app.usecase.book;

import org.jspecify.annotations.NullMarked;
