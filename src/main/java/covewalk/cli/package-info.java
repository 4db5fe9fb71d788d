/**
 * The commands: {@code convert}, {@code check}, {@code report}, {@code punch}, {@code verify}, {@code import}. Way in: {@link covewalk.cli.Commands}.
 * A class a command, and each does little: it takes what was asked, calls the packages that know how, and turns what
 * came out into text and an exit code. Only here is the library that reads command lines used. Knows no screen.
 */
package covewalk.cli;
