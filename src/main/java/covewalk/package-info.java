/**
 * Covewalk checks linear LED lighting in coves for visible colour steps, from readings taken on site.
 * {@link covewalk.Main} starts it; everything else lives in the packages below, each with a page like this one.
 */
package covewalk;
