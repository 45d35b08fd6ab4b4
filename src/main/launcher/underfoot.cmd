@echo off
rem Starts Underfoot quickly: one compiler, one collector, room enough that it seldom collects, and the classes as they
rem were archived when it was built, in the place they were archived for.
rem The archive is passed over if it is not there or does not fit the Java that runs it.
setlocal
set "here=%~dp0"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
rem It may have come with a Java of its own.
if exist "%here%runtime\bin\java.exe" set "java=%here%runtime\bin\java"
set "quick=-Dunderfoot.handed.over=true -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms320m -XX:NewSize=200m -XX:-UsePerfData"
rem What starts quickest is not what runs longest.
if /i "%~1"=="batch" set "quick=-XX:+UseParallelGC"
if /i "%~1"=="ask" set "quick=-XX:+UseParallelGC"
if not exist "%here%underfoot.jsa" goto plain
"%java%" -XX:+IgnoreUnrecognizedVMOptions %quick% -Xshare:auto -Xlog:disable -Xlog:all=off -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 "-XX:SharedArchiveFile=%here%underfoot.jsa" -jar "%here%underfoot.jar" %*
exit /b %errorlevel%
:plain
"%java%" -XX:+IgnoreUnrecognizedVMOptions %quick% -jar "%here%underfoot.jar" %*
exit /b %errorlevel%
