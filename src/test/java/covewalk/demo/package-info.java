/**
 * The demonstration survey in {@code survey-demo/reading-rooms}: an invented building with planted faults. Its readings
 * are made from three tables in the test resources of this package (the true colours, the walk, what is planted). Way
 * in: {@link covewalk.demo.MakeDemo}. The tests hold the committed files to the tables, and the judge to what is planted.
 */
package covewalk.demo;
