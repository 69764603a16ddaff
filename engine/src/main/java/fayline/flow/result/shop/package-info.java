/**
 * The shop around the steps: who is in when, which places there are, the state of moulds, which cures and windows run. Start at
 * {@link fayline.flow.result.shop.WorkMaker}.
 */
@NullMarked
package fayline.flow.result.shop;

import org.jspecify.annotations.NullMarked;
