/** The surveys of this computer: recent ones, new ones, the demonstration, and what each still lacks. Way in: {@code SurveysScreen}. */
package covewalk.app.surveys;
