/**
 * Proofs over many entries with few hashes: a tree of SHA-256 hashes as in RFC 9162, section 2.1. One entry is shown to stand
 * in the record, and a later record to hold an earlier one unaltered, by about as many hashes as the logarithm of its length.
 * Start at {@link fayline.flow.record.proof.HashTree}; whoever has only a proof checks it with
 * {@link fayline.flow.record.proof.Proof}. Entries and their chain do not belong here: the tree takes bytes.
 */
@NullMarked
package fayline.flow.record.proof;

import org.jspecify.annotations.NullMarked;
