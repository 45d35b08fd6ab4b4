/**
 * The language rules are written in: the vocabulary and the rules, read from their files into
 * objects. Nothing an author writes is ever compiled or run; a sentence that is none of the
 * vocabulary is refused with its file and line.
 */
package underfoot.language;
