/**
 * The book of what was built, on paper for keeping. Start at {@link fayline.app.pdf.book.BookPdf}. What stands in it is put
 * together by the use case; here it is only worded and laid out.
 */
@NullMarked
package fayline.app.pdf.book;

import org.jspecify.annotations.NullMarked;
