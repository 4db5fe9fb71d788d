/**
 * Describing a survey by typing: forms whose lines are read, taken into the survey, and answered where they cannot be.
 * Ways in: {@link covewalk.app.forms.Description}, {@link covewalk.app.forms.Form} and {@link covewalk.app.forms.FormView}.
 * Shared by the places where something is described; knows none of them.
 */
package covewalk.app.forms;
