/**
 * Files in and out: the definition folder, its verification, its history. Start at
 * {@link fayline.store.file.DefinitionReader}. Tables of the database do not belong here.
 */
@NullMarked
package fayline.store.file;

import org.jspecify.annotations.NullMarked;
