package fayline.app.usecase.shop;

/**
 * What somebody changed since somebody else had looked.
 *
 * @param what what of, as a key of the file or in words
 * @param seen what stood there when they looked; empty for nothing
 * @param now what stands there now; empty for nothing
 * @param mine what they want instead; empty for nothing
 * @param by who changed it
 * @param seq in which entry
 */
public record Meanwhile(String what, String seen, String now, String mine, String by, long seq) {}
