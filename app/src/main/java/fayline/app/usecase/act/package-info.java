/**
 * What people do: start, finish, note and correct steps, take readings, publish a plan, change definition files. Each is one
 * appended entry. Start at {@link fayline.app.usecase.act.StartStep}. Ids come from the sender, so that sending again makes no
 * second entry.
 */
@NullMarked
package fayline.app.usecase.act;

import org.jspecify.annotations.NullMarked;
