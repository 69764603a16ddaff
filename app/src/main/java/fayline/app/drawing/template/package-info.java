/**
 * The template of a trim in true size: the part's edge, the lines to cut to and the marks of the stations, and how it is
 * written as DXF and SVG. Start at {@link fayline.app.drawing.template.Template}. Frame: the plane of the part seen from
 * outside, in mm, y up; x is aft on a left part and forward on a right one. What does not belong here: paper and tiles, and
 * how deep to cut.
 */
@NullMarked
package fayline.app.drawing.template;

import org.jspecify.annotations.NullMarked;
