/** What if: the plan as it is beside the plan as it might be. Start at {@link fayline.app.web.whatif.WhatIfPage}. */
@NullMarked
package fayline.app.web.whatif;

import org.jspecify.annotations.NullMarked;
