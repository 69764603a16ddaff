/**
 * The door to the shop's network: signing in, pairing phones and tablets, switching person, who may enter, and how a phone
 * learns to trust the server. Start at {@link fayline.app.web.people.PeopleGate}. Where the program serves this machine alone
 * none of these addresses is there.
 */
@NullMarked
package fayline.app.web.people;

import org.jspecify.annotations.NullMarked;
