/** The survey's description: site, visit, set-ups, limits, reels, coves with their placements and feeds. Way in: {@code SiteScreen}. */
package covewalk.app.site;
