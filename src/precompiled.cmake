# Reading the headers of Qt, GoogleTest and the standard library takes most of a file's compile time, so
# they are compiled once for each kind of target and shared. Sources include all the same
# what they use: -DBASTEWRIGHT_PRECOMPILED=OFF builds without.
set(bastewright_std_headers <algorithm> <cmath> <cstdint> <functional> <map> <memory> <optional> <set> <string>
    <string_view> <utility> <variant> <vector>)
# Those that most files read, by themselves or through others: all of Qt's would take twice as long.
set(bastewright_qt_headers <QCoreApplication> <QDateTime> <QDir> <QImage> <QLocale> <QPainter> <QPainterPath> <QQuickItem>
    <QTimer> <QVariant> <QtQml/qqmlprivate.h>)
set(bastewright_gtest_headers <gmock/gmock.h> <gtest/gtest.h>)
# Tests call code that is optimised; to optimise their own takes a third of their compile time.
set(bastewright_test_options -O0)
# Planners search and get all the optimisation there is. What reads, checks, waits for people or paints is
# quick enough with less, which takes a quarter to a third of its compile time.
set(bastewright_plain_options -O1)

# bastewright_precompiled(TARGET std|qt|gtest|qt_gtest): TARGET reads that kind of header precompiled.
function(bastewright_precompiled target kind)
  if(NOT BASTEWRIGHT_PRECOMPILED)
    return()
  endif()
  set(maker bastewright_precompiled_${kind})
  if(NOT TARGET ${maker})
    set(headers ${bastewright_std_headers})
    file(CONFIGURE OUTPUT ${PROJECT_BINARY_DIR}/${maker}.cpp CONTENT "// Only carries the headers.\n")
    add_library(${maker} STATIC ${PROJECT_BINARY_DIR}/${maker}.cpp)
    set_target_properties(${maker} PROPERTIES AUTOMOC OFF)
    if(kind MATCHES gtest) # for programs, whose code is compiled as such
      set_target_properties(${maker} PROPERTIES POSITION_INDEPENDENT_CODE OFF)
      target_compile_options(${maker} PRIVATE -fPIE ${bastewright_test_options})
    endif()
    target_link_libraries(${maker} PRIVATE bastewright_flags)
    if(kind MATCHES qt)
      find_package(Qt6 6.4 REQUIRED COMPONENTS Gui Quick)
      target_link_libraries(${maker} PRIVATE Qt6::Gui)
      # Not linked: it would set macros that some who read the headers do not set.
      target_include_directories(${maker} SYSTEM PRIVATE $<TARGET_PROPERTY:Qt6::Quick,INTERFACE_INCLUDE_DIRECTORIES>
                                 $<TARGET_PROPERTY:Qt6::Qml,INTERFACE_INCLUDE_DIRECTORIES>
                                 $<TARGET_PROPERTY:Qt6::QmlIntegration,INTERFACE_INCLUDE_DIRECTORIES>
                                 $<TARGET_PROPERTY:Qt6::QmlModels,INTERFACE_INCLUDE_DIRECTORIES>
                                 $<TARGET_PROPERTY:Qt6::Network,INTERFACE_INCLUDE_DIRECTORIES>)
      if(kind STREQUAL qt) # for libraries, whose code is compiled as such
        target_compile_options(${maker} PRIVATE ${bastewright_plain_options})
      endif()
      list(APPEND headers ${bastewright_qt_headers})
    endif()
    if(kind MATCHES gtest)
      target_link_libraries(${maker} PRIVATE GTest::gmock)
      list(APPEND headers ${bastewright_gtest_headers})
    endif()
    target_precompile_headers(${maker} PRIVATE ${headers})
    target_compile_options(${maker} PRIVATE -fpch-preprocess)
  endif()
  target_compile_options(${target} PRIVATE -fpch-preprocess) # lets a compiler cache see inside
  target_precompile_headers(${target} REUSE_FROM ${maker})
endfunction()
