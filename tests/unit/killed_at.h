// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A kill just before any one call of the system that changes a file.
#pragma once

#include "store_kit.h"

#include <csignal>
#include <functional>
#include <optional>
#include <sys/ptrace.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

namespace halfcup::storetest {

/// Whether a call of the system may change what is on the disk.
inline bool changesFiles(std::uint64_t call) {
    switch (call) {
#ifdef SYS_rename // not on every processor
    case SYS_rename:
    case SYS_unlink:
    case SYS_open:
#endif
    case SYS_renameat:
    case SYS_renameat2:
    case SYS_unlinkat:
    case SYS_openat:
    case SYS_ftruncate:
    case SYS_pwrite64:
    case SYS_write:
    case SYS_fsync:
    case SYS_fdatasync:
        return true;
    default:
        return false;
    }
}

/// Runs work in a process of its own that is killed just before its nth call (from 0) that may change a file.
/// How many such calls there were where it came to its end; -1 where it was killed; nothing where this system
/// lets nobody watch a process.
inline std::optional<int> killedAtCall(int nth, const std::function<void()>& work) {
    constexpr int isSystemCall = SIGTRAP | 0x80;
    constexpr int isEntry = 1; // PTRACE_SYSCALL_INFO_ENTRY of linux/ptrace.h, which cannot be included beside
    const pid_t child = fork();
    if (child == 0) {
        if (ptrace(PTRACE_TRACEME, 0, nullptr, nullptr) != 0)
            _exit(skipped);
        raise(SIGSTOP);
        try {
            work();
        } catch (const std::exception&) {
            _exit(1);
        }
        _exit(0);
    }
    int status = 0;
    waitpid(child, &status, 0);
    if (!WIFSTOPPED(status) ||
        ptrace(PTRACE_SETOPTIONS, child, nullptr, PTRACE_O_TRACESYSGOOD | PTRACE_O_EXITKILL) != 0) {
        kill(child, SIGKILL);
        waitpid(child, &status, 0);
        return std::nullopt;
    }
    int calls = 0;
    while (true) {
        ptrace(PTRACE_SYSCALL, child, nullptr, nullptr);
        waitpid(child, &status, 0);
        if (WIFEXITED(status))
            return WEXITSTATUS(status) == 0 ? calls : -2;
        if (WIFSIGNALED(status))
            return -2;
        if (WSTOPSIG(status) != isSystemCall)
            continue;
        struct __ptrace_syscall_info info {};
        ptrace(PTRACE_GET_SYSCALL_INFO, child, sizeof info, &info);
        if (info.op != isEntry || !changesFiles(info.entry.nr) || calls++ != nth)
            continue;
        kill(child, SIGKILL);
        waitpid(child, &status, 0);
        return -1;
    }
}

} // namespace halfcup::storetest
