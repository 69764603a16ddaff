/**
 * Files of check cases as they lie in a folder. Start at {@link fayline.app.usecase.cases.ReadCaseFiles}. What does not belong
 * here: layouts and subjects, which are the bench's.
 */
@NullMarked
package fayline.app.usecase.cases;

import org.jspecify.annotations.NullMarked;
