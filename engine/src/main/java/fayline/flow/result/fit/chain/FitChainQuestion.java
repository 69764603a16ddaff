package fayline.flow.result.fit.chain;

import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.chain.FitChain;
import fayline.flow.project.fit.Fit;
import fayline.flow.result.fit.FitResult;

/**
 * A chain with what was read where it ends.
 *
 * @param chain the chain
 * @param end what follows from the readings of the fit in which it ends
 * @param fits all fits, whose schemes links may name
 * @param assume whether uncertainties that nobody gave may be replaced by the named defaults, shown as assumed
 */
public record FitChainQuestion(FitChain chain, FitResult end, Catalog<Fit> fits, boolean assume) {}
