# Writes the commit of SOURCE into the header OUT, where it has changed. Run at every build.
execute_process(COMMAND git -C ${SOURCE} describe --always --dirty --abbrev=10 --exclude=*
                OUTPUT_VARIABLE commit RESULT_VARIABLE failed
                OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
if(failed OR NOT EXISTS ${SOURCE}/.git) # not a checkout, or inside somebody else's
  set(commit unknown)
endif()
file(CONFIGURE OUTPUT ${OUT} CONTENT "#pragma once\n#define BASTEWRIGHT_COMMIT \"${commit}\"\n")
