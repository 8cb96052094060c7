# Gives every packed file the day of the release, so that two builds of one version make the same package.
file(GLOB_RECURSE packed LIST_DIRECTORIES true ${CPACK_TEMPORARY_INSTALL_DIRECTORY}/*)
foreach(path ${packed} ${CPACK_TEMPORARY_INSTALL_DIRECTORY})
  execute_process(COMMAND touch -h -d "${CPACK_GRITWRIGHT_RELEASE_DATE} 00:00:00Z" ${path} COMMAND_ERROR_IS_FATAL ANY)
endforeach()
execute_process(COMMAND date -u -d "${CPACK_GRITWRIGHT_RELEASE_DATE}" +%s OUTPUT_VARIABLE seconds OUTPUT_STRIP_TRAILING_WHITESPACE)
set(ENV{SOURCE_DATE_EPOCH} ${seconds})
