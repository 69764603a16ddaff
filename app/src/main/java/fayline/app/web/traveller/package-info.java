/**
 * What goes into a step and into a part, as pages show it: plies to tick, lots to pick, cups to weigh, bags to test. Start at
 * {@link fayline.app.web.traveller.TravellerView}; {@link fayline.app.web.traveller.TravellerForms} reads what is typed. What is checked
 * does not belong here.
 */
@NullMarked
package fayline.app.web.traveller;

import org.jspecify.annotations.NullMarked;
