# The lettering that comes with the program: Inter (Debian's fonts-inter), cut down by Debian's fonttools to what we write.
# Sets OWN_FONTS to the files that the build makes; to nothing where Inter or the tools are missing.
set(OWN_FONTS "")
set(own_font_script ${CMAKE_CURRENT_LIST_DIR}/cut_font.py)
set(own_font_styles Regular SemiBold)
find_program(STONEPENNY_PYTHON python3 HINTS /usr/bin)
find_path(STONEPENNY_INTER Inter-Regular.otf PATHS /usr/share/fonts/opentype/inter NO_DEFAULT_PATH)

set(can_cut FALSE)
if(STONEPENNY_PYTHON AND STONEPENNY_INTER)
  set(can_cut TRUE)
  foreach(style IN LISTS own_font_styles)
    execute_process(COMMAND ${STONEPENNY_PYTHON} ${own_font_script} ${STONEPENNY_INTER}/Inter-${style}.otf
      RESULT_VARIABLE refused OUTPUT_QUIET ERROR_QUIET)
    if(refused)
      set(can_cut FALSE)
    endif()
  endforeach()
endif()
if(can_cut)
  foreach(style IN LISTS own_font_styles)
    set(cut ${CMAKE_CURRENT_BINARY_DIR}/fonts/StonepennySans-${style}.otf)
    add_custom_command(OUTPUT ${cut}
      COMMAND ${CMAKE_COMMAND} -E make_directory ${CMAKE_CURRENT_BINARY_DIR}/fonts
      COMMAND ${STONEPENNY_PYTHON} ${own_font_script} ${STONEPENNY_INTER}/Inter-${style}.otf ${style} ${cut}
      DEPENDS ${own_font_script} ${STONEPENNY_INTER}/Inter-${style}.otf VERBATIM)
    list(APPEND OWN_FONTS ${cut})
  endforeach()
else()
  message(NOTICE "-- No lettering of our own: it is made of Debian's fonts-inter by python3-fonttools; the system's font stands in")
endif()
