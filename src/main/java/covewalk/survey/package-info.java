/**
 * What a survey consists of, and what makes one sound: the site and visit, the meter's set-ups, the limits, reels,
 * coves with their placements and feeds, and the readings with the digits as typed.
 * Ways in: {@link covewalk.survey.Survey} and {@link covewalk.survey.Reading}; {@link covewalk.survey.Soundness} says
 * what is wrong with them as {@link covewalk.survey.Problem}s.
 * Takes colours from {@code covewalk.colour}. Opens no file, judges no colour difference, knows no screen.
 */
package covewalk.survey;
