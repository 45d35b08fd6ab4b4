/**
 * The page with drawings as a PDF. The library that makes it is loaded only when it is asked for.
 */
package underfoot.report.pdf;
