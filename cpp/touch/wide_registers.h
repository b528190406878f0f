// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#if defined(__x86_64__) && defined(__GNUC__)
#include <immintrin.h>
#endif

namespace halfcup::touch {

#if defined(__x86_64__) && defined(__GNUC__)
/// Tells the processor that the upper halves of its wide registers are free. What loads Qt's libraries leaves
/// them in use, and then each logarithm of the C library, which is written for AVX, costs 260 ns in place of
/// 9 among our own code, which is not (measured on an Intel Xeon; "transition penalty" in Intel's
/// Optimization Reference Manual). Call before long reckoning; it costs nothing.
__attribute__((target("avx"))) inline void freeWideRegistersAvx() {
    _mm256_zeroupper();
}

inline void freeWideRegisters() {
    if (__builtin_cpu_supports("avx"))
        freeWideRegistersAvx();
}
#else
inline void freeWideRegisters() {} // other processors have no such halves
#endif

} // namespace halfcup::touch
