package fayline.app.pdf;

import fayline.app.drawing.SvgRenderer;
import java.util.ArrayDeque;
import java.util.Deque;

/** Writes well-formed XHTML: every element is closed, every text is data. */
public final class Markup {
    private final StringBuilder out = new StringBuilder(8192);
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element of a class; an empty class is left out. */
    public Markup open(String element, String styled) {
        out.append('<').append(element);
        if (!styled.isEmpty()) {
            out.append(" class=\"").append(SvgRenderer.escape(styled)).append('"');
        }
        out.append('>');
        open.push(element);
        return this;
    }

    /** Opens an element. */
    public Markup open(String element) {
        return open(element, "");
    }

    /**
     * Opens an element with attributes.
     *
     * @param element the element
     * @param attributes names and values in turn
     */
    public Markup openWith(String element, String... attributes) {
        begin(element, attributes).append('>');
        open.push(element);
        return this;
    }

    /** Writes an element without content, with attributes as above. */
    public Markup empty(String element, String... attributes) {
        begin(element, attributes).append("/>");
        return this;
    }

    private StringBuilder begin(String element, String... attributes) {
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(SvgRenderer.escape(attributes[i + 1]))
                    .append('"');
        }
        return out;
    }

    /** Closes the element that was opened last. */
    public Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** Writes text. */
    public Markup text(String text) {
        out.append(SvgRenderer.escape(text));
        return this;
    }

    /** Writes an element of a class around a text. */
    public Markup element(String element, String styled, String text) {
        return open(element, styled).text(text).close();
    }

    /** Writes an element around a text. */
    public Markup element(String element, String text) {
        return element(element, "", text);
    }

    /** Writes a drawing. */
    public Markup svg(String svg) {
        out.append(svg);
        return this;
    }

    @Override
    public String toString() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("not closed: " + open);
        }
        return out.toString();
    }
}
