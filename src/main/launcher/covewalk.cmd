@echo off
rem Starts Covewalk from the folder that this file lies in, with options of Java that suit a program which runs for seconds:
rem no second, slower compiling of code that soon has done its work; the collector of garbage that starts fastest, with a small
rem and fixed room for what is new, as most of it either goes at once or stays to the end; and memory in large pages, where
rem there are such.
rem An archive of classes, covewalk.jsa beside this file, is used if it is there (docs/performance.md says how to make one);
rem Java passes over one that does not fit it, and -Xlog keeps it from printing why among the results.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set archive=
if exist "%~dp0covewalk.jsa" set archive="-XX:SharedArchiveFile=%~dp0covewalk.jsa" -Xlog:cds=off -Xlog:cds+dynamic=off
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn64m -XX:MaxTenuringThreshold=1 -XX:+IgnoreUnrecognizedVMOptions -XX:+UseTransparentHugePages %archive% -jar "%~dp0covewalk.jar" %*
exit /b %ERRORLEVEL%
