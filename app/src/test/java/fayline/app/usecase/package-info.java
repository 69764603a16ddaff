/** Use cases driven as the pages and commands drive them. Start at {@link fayline.app.usecase.BenchTest}. */
@org.jspecify.annotations.NullMarked
package fayline.app.usecase;
