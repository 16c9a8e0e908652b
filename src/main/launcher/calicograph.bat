@echo off
rem Starts Calicograph with the JDK of JAVA_HOME, or else with the java on the PATH.
rem CALICOGRAPH_JAVA_OPTIONS holds further options for the JVM.
setlocal

for %%I in ("%~dp0..") do set "app=%%~fI"

set "java=java"
if not defined JAVA_HOME goto search
set "java=%JAVA_HOME%\bin\java.exe"
if exist "%java%" goto modules
echo calicograph: JAVA_HOME is %JAVA_HOME%, but there is no bin\java.exe in it. Install a JDK, 17 or newer, and set JAVA_HOME to its folder. 1>&2
exit /b 2

:search
where java >nul 2>nul
if not errorlevel 1 goto modules
echo calicograph: no java on the PATH. Install a JDK, 17 or newer, and set JAVA_HOME to its folder. 1>&2
exit /b 2

:modules
"%java%" --list-modules 2>nul | findstr /b "jdk.jshell" >nul
if not errorlevel 1 goto start
echo calicograph: this Java has no jdk.jshell module, so it can't run cells. Install a JDK, 17 or newer, and set JAVA_HOME to its folder. 1>&2
exit /b 2

:start
if "%~1"=="open" goto desk
"%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 "-Dcalicograph.home=%app%" %CALICOGRAPH_JAVA_OPTIONS% -cp "%app%\lib\calicograph.jar;%app%\lib\base\*" org.calicograph.command.Main %*
exit /b %errorlevel%

:desk
"%java%" -XX:+UseSerialGC "-Dcalicograph.home=%app%" %CALICOGRAPH_JAVA_OPTIONS% --module-path "%app%\lib\javafx" --add-modules javafx.controls -cp "%app%\lib\calicograph.jar;%app%\lib\base\*;%app%\lib\desk\*" org.calicograph.command.Main %*
exit /b %errorlevel%
