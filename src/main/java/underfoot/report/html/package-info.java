/**
 * The advice as one HTML page with drawings, made to be looked at: on a phone, on paper, in the
 * dark. Drawings are SVG made here; what they show comes from the advice record alone.
 */
package underfoot.report.html;
