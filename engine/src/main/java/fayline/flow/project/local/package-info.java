/**
 * What the authority on the spot asks of a builder: who counts, which tasks, which stages it looks at. All of it is data of a
 * project: rules differ by country, and none of them stands in the program. Start at
 * {@link fayline.flow.project.local.LocalRules}. What was done does not belong here.
 */
@NullMarked
package fayline.flow.project.local;

import org.jspecify.annotations.NullMarked;
