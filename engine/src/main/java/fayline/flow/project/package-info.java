/**
 * The definition of a project as decided: an immutable value made from the definition folder. Start at
 * {@link fayline.flow.project.Definition}. Formulas do not belong here, nor anything computed.
 */
@NullMarked
package fayline.flow.project;

import org.jspecify.annotations.NullMarked;
