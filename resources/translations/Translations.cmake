# Translations: what the sources say, checked against each language's file, and compiled into the
# program. A text that a language lacks fails the build of that language with its name.
add_executable(check_translation resources/translations/check_translation.cpp)
target_link_libraries(check_translation PRIVATE Qt6::Core)

# leadline_translations(target set "de;fr" sources...)
# Compiles resources/translations/<set>_<language>.ts into the target as
# ":/leadline/translations/<set>_<language>.qm". The sources, absolute, are those that hold the texts.
# English is what the sources say; its file, where it is named, holds the forms of counts alone.
function(leadline_translations target set languages)
  set(folder ${PROJECT_SOURCE_DIR}/resources/translations)
  set(made ${CMAKE_CURRENT_BINARY_DIR}/translations)
  set(template ${made}/${set}.ts)
  file(MAKE_DIRECTORY ${made})
  set(counts ${made}/${set}_counts.ts)
  # Written anew only when a text changed, so that other edits build nothing here.
  add_custom_command(OUTPUT ${template} ${counts}
    COMMAND ${CMAKE_COMMAND} -E rm -f ${template}.new.ts ${counts}.new.ts
    COMMAND Qt6::lupdate -silent -locations none -no-obsolete -I ${PROJECT_SOURCE_DIR}
            ${ARGN} -ts ${template}.new.ts
    COMMAND Qt6::lupdate -silent -locations none -no-obsolete -pluralonly
            -I ${PROJECT_SOURCE_DIR} ${ARGN} -ts ${counts}.new.ts
    COMMAND ${CMAKE_COMMAND} -E copy_if_different ${template}.new.ts ${template}
    COMMAND ${CMAKE_COMMAND} -E copy_if_different ${counts}.new.ts ${counts}
    DEPENDS ${ARGN} VERBATIM COMMENT "Reading the texts of ${set}")
  set(compiled)
  foreach(language IN LISTS languages)
    set(wanted ${template})
    if(language STREQUAL "en")
      set(wanted ${counts})
    endif()
    set(source ${folder}/${set}_${language}.ts)
    set(result ${made}/${set}_${language}.qm)
    add_custom_command(OUTPUT ${result}
      COMMAND check_translation ${wanted} ${source}
      COMMAND Qt6::lrelease -silent ${source} -qm ${result}
      DEPENDS ${wanted} ${source} check_translation VERBATIM
      COMMENT "Checking ${set} in ${language}")
    list(APPEND compiled ${result})
  endforeach()
  if(compiled)
    qt_add_resources(${target} ${target}_translations PREFIX /leadline/translations
                     BASE ${made} FILES ${compiled})
  endif()
endfunction()
