// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/wide_registers.h"

#include <QTest>

#if defined(__x86_64__) && defined(__GNUC__)
#include <cpuid.h>
#endif

class WideRegistersTest : public QObject {
    Q_OBJECT
private slots:
    void upperHalvesAreFreeAfterwards() {
#if defined(__x86_64__) && defined(__GNUC__)
        // Intel's Software Developer's Manual, volume 1, chapter 13: leaf 0DH, sub-leaf 1, bit 2 of EAX says
        // that XGETBV with ECX = 1 tells what is in use; bit 2 of that are the upper halves.
        unsigned a = 0, b = 0, c = 0, d = 0;
        if (!__builtin_cpu_supports("avx") || !__get_cpuid_count(0xD, 1, &a, &b, &c, &d) || (a & 4) == 0)
            QSKIP("This processor has no AVX, or does not tell what of it is in use.");
        const auto inUse = [] {
            unsigned low = 0, high = 0;
            asm volatile("xgetbv" : "=a"(low), "=d"(high) : "c"(1));
            return (low & 4) != 0;
        };
        asm volatile("vpcmpeqd %%xmm15, %%xmm15, %%xmm15\n\tvinsertf128 $1, %%xmm15, %%ymm15, %%ymm15" ::
                         : "xmm15");
        const bool before = inUse();
        halfcup::touch::freeWideRegisters();
        const bool afterwards = inUse();
        QVERIFY(before);
        QVERIFY(!afterwards);
#else
        QSKIP("Another processor than x86-64: there is nothing to free.");
#endif
    }
};

QTEST_APPLESS_MAIN(WideRegistersTest)
#include "touch_wide_registers.moc"
