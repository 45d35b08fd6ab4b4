@echo off
rem Starts Underfoot quickly: one compiler, one collector, and the classes as they were archived when it was built.
rem The archive is passed over if it is not there or does not fit the Java that runs it.
setlocal
set "here=%~dp0"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
rem What starts quickest is not what runs longest.
if /i "%~1"=="batch" goto lasting
if /i "%~1"=="ask" goto lasting
if not exist "%here%underfoot.jsa" goto plain
"%java%" -Dunderfoot.handed.over=true -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -Xlog:disable -Xlog:all=off "-XX:SharedArchiveFile=%here%underfoot.jsa" -jar "%here%underfoot.jar" %*
exit /b %errorlevel%
:plain
"%java%" -Dunderfoot.handed.over=true -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "%here%underfoot.jar" %*
exit /b %errorlevel%
:lasting
"%java%" -XX:+UseParallelGC -jar "%here%underfoot.jar" %*
exit /b %errorlevel%
