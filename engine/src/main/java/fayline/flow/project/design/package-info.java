/** What is made. Start at {@link fayline.flow.project.design. assemblies, parts with zones and laminates, joints, fits:Part}. Nothing computed belongs here. */
@NullMarked
package fayline.flow.project.design;

import org.jspecify.annotations.NullMarked;
