# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Run by CPack before it packs: folders as the Debian Policy wants them (10.9), whatever the umask of whoever builds.
file(GLOB_RECURSE there LIST_DIRECTORIES true ${CPACK_TEMPORARY_DIRECTORY}/*)
foreach(one IN LISTS there)
    if(IS_DIRECTORY ${one} AND NOT IS_SYMLINK ${one})
        file(CHMOD ${one} DIRECTORY_PERMISSIONS
            OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
    endif()
endforeach()
