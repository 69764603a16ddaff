/** Ways of making as data. Start at {@link fayline.flow.project.recipe. steps with drivers, windows, holds, checks and cautions:Recipe}. Nothing computed belongs here. */
@NullMarked
package fayline.flow.project.recipe;

import org.jspecify.annotations.NullMarked;
