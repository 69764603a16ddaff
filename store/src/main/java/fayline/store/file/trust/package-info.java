/**
 * How the server proves to phones who it is: a certificate authority of the shop's own, kept in the data folder, or files
 * that the owner supplies. Start at {@link fayline.store.file.trust.LocalAuthority}. X.509 as in [rfc5280]; no cryptography
 * of our own.
 */
@NullMarked
package fayline.store.file.trust;

import org.jspecify.annotations.NullMarked;
