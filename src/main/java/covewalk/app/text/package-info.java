/**
 * What stands on the screens, in the language chosen. Way in: {@link covewalk.app.text.Texts}.
 * Each package of screens keeps its own bundle, {@code texts.properties}, and one for each further language. Sentences about
 * verdicts and faults come from {@code covewalk.words}, so that screen, paper and command line say the same.
 */
package covewalk.app.text;
