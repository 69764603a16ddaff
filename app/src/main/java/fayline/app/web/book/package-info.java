/**
 * Pages from which the book of what was built is printed. Start at {@link fayline.app.web.book.BookPage}. What stands in a book
 * does not belong here.
 */
@NullMarked
package fayline.app.web.book;

import org.jspecify.annotations.NullMarked;
