/**
 * Judges plans: lists every broken rule of a plan, whoever made it. Start at {@link fayline.flow.audit.PlanAuditor}. There is
 * one class per rule, named as a sentence says it, so the package holds more types than others; what the rules mean stands
 * word for word in {@link fayline.flow.plan}. Nothing that makes or mends a plan belongs here, nor anything shared with what
 * does.
 */
@NullMarked
package fayline.flow.audit;

import org.jspecify.annotations.NullMarked;
