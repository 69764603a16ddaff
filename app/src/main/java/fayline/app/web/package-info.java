/**
 * The local web server: one process, loopback only. Start at {@link fayline.app.web.WebServer}. Pages stand in packages of
 * their own by feature; a handler reads the form, calls one use case and renders one view.
 */
@NullMarked
package fayline.app.web;

import org.jspecify.annotations.NullMarked;
