/**
 * Who is at a screen, and may they: people who are known by account, their devices and sign-ins, and the one table of roles
 * and acts. Start at {@link fayline.app.usecase.people.People}. What was decided about people is told in the record; secrets
 * are kept as hashes beside it and never stand in an entry. Passwords, PINs and tokens are made and checked by libraries'
 * functions alone.
 */
@NullMarked
package fayline.app.usecase.people;

import org.jspecify.annotations.NullMarked;
