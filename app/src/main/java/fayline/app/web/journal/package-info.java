/**
 * The record's own pages: entries with what they changed, the check of the chain, sheets for paper. Start at
 * {@link fayline.app.web.journal.RecordPage}.
 */
@NullMarked
package fayline.app.web.journal;

import org.jspecify.annotations.NullMarked;
