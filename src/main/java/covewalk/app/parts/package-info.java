/**
 * Pieces that several screens show: pictures painted from plain shapes, the mark of a verdict, a number pad, a field for
 * digits. They hold no survey and decide nothing.
 */
package covewalk.app.parts;
