/**
 * What a question of nested JSON must look like: one description both reads it strictly, naming every field at fault, and
 * prints its JSON Schema. Start at {@link fayline.app.usecase.calc.form.Form}. What does not belong here: what the fields mean.
 */
@NullMarked
package fayline.app.usecase.calc.form;

import org.jspecify.annotations.NullMarked;
