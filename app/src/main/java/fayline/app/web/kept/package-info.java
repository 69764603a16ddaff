/**
 * Entries that a phone kept while it had no network: how they come in, exactly once and in order, and the page that lists what is
 * kept. Start at {@link fayline.app.web.kept.KeptPage}. What a kept form does is its own page's, see {@link
 * fayline.app.web.frame.TakesKept}; the phone's side is {@code static/kept-store.js}, {@code worker.js} and {@code kept.js}.
 */
@NullMarked
package fayline.app.web.kept;

import org.jspecify.annotations.NullMarked;
