/**
 * Which lot went where, and what a part holds. Start at {@link fayline.flow.result.trace.LotTrace}. Both ways are one pass over what the
 * bench told; nothing is computed that nobody said.
 */
@NullMarked
package fayline.flow.result.trace;

import org.jspecify.annotations.NullMarked;
