@echo off
rem Starts Covewalk from the folder that this file lies in, with options of Java that suit a program which runs for seconds:
rem no second, slower compiling of code that soon has done its work; and the collector of garbage that starts fastest, with a small
rem and fixed room for what is new, as most of it either goes at once or stays to the end; and
rem memory in large pages, where there are such.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn64m -XX:MaxTenuringThreshold=1 -XX:+IgnoreUnrecognizedVMOptions -XX:+UseTransparentHugePages -jar "%~dp0covewalk.jar" %*
exit /b %ERRORLEVEL%
