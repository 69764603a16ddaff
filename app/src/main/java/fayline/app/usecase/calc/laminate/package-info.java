/**
 * Topics about laminates. Start at {@link fayline.app.usecase.calc.laminate.LaminateTopics}. They read forms and call the methods
 * of {@code method.laminate}, {@code method.micro}, {@code method.springin} and {@code method.asmade}; no mechanics here.
 */
@NullMarked
package fayline.app.usecase.calc.laminate;

import org.jspecify.annotations.NullMarked;
