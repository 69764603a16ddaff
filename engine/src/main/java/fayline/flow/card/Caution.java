package fayline.flow.card;

/**
 * A safety caution as it stands on a card.
 *
 * @param key its key in the caution table
 * @param title the danger in a word or two
 * @param text what to do about it, in a sentence or three
 * @param source where it comes from
 */
public record Caution(String key, String title, String text, String source) {}
