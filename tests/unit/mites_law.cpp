// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

// LogLaw and TabulatedLaw against laws with a closed form (Boost.Math's incomplete gamma and beta, the
// normal).
#include "mites/log_law.h"
#include "mites/tabulated_law.h"
#include "mites_tables.h"

#include <boost/math/distributions/lognormal.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/digamma.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <boost/math/special_functions/trigamma.hpp>

using namespace halfcup::mites;
using namespace halfcup::mites::testing;

class LawTest : public QObject {
    Q_OBJECT
private slots:
    void gammaIsTheIncompleteGamma() {
        for (const double shape : {0.02, 0.5, 1.5, 9.5, 60.5, 1e4, 1e9}) {
            LogLaw law;
            law.addGamma(shape, 1);
            law.prepare();
            for (const double p : {1e-12, 1e-9, 1e-6, 0.001, 0.05, 0.3, 0.5, 0.9, 0.999, 1 - 1e-6}) {
                const double x = boost::math::gamma_p_inv(shape, p) / shape;
                if (!(x > 1e-290))
                    continue;
                const double below = boost::math::gamma_p(shape, x * shape);
                const double above = boost::math::gamma_q(shape, x * shape);
                NEAR(law.cumulative(std::log(x)), below, std::max(2e-8 * below, 1e-12), shape);
                NEAR(law.complement(std::log(x)), above, std::max(2e-8 * above, 1e-12), shape);
                NEAR(law.quantile(p), std::log(x), 1e-8 * (1 + std::abs(std::log(x))), shape);
            }
        }
    }
    void farUpperTailKeepsItsDigits() {
        LogLaw law;
        law.addGamma(0.5, 1);
        law.prepare();
        for (const double x : {10.0, 30.0, 100.0, 300.0})
            RELATIVE(law.complement(std::log(2 * x)), boost::math::gamma_q(0.5, x), 1e-7, x);
        QCOMPARE(law.complement(20), 0.0); // exp(-2.4e8) is below any number
        QCOMPARE(law.cumulative(20), 1.0);
    }
    void ratioOfGammasIsBeta() {
        for (const double a : {0.5, 2.5, 40.5})
            for (const double b : {0.3, 7.0, 100.5}) {
                LogLaw law;
                law.addGamma(a, 1).addGamma(b, -1).shift(std::log(a / b));
                law.prepare();
                for (const double odds : {1e-6, 0.01, 0.4, 1.0, 3.0, 50.0})
                    NEAR(law.cumulative(std::log(odds)), boost::math::ibeta(a, b, odds / (1 + odds)), 1e-11,
                         a * b);
            }
    }
    void betaIsTheIncompleteBeta() {
        // ln of a Beta alone decays too slowly to invert; with a gamma beside it the sum has a closed form
        // where the gamma's shape is a + b: Gamma(a + b) * Beta(a, b) is Gamma(a).
        LogLaw law;
        law.addBeta(4, 2.5, 1).addGamma(6.5, 1).shift(std::log(4.0));
        law.prepare();
        for (const double x : {0.5, 2.0, 4.0, 9.0})
            NEAR(law.cumulative(std::log(x)), boost::math::gamma_p(4.0, x), 1e-11, x);
    }
    void manyMitesAreLogNormal() {
        LogLaw law(0.4, 0.09);
        law.addGamma(1e14, 1);
        law.prepare();
        const boost::math::lognormal_distribution<> normal(0.4, 0.3);
        for (const double p : {0.001, 0.05, 0.5, 0.95, 0.999})
            RELATIVE(std::exp(law.quantile(p)), boost::math::quantile(normal, p), 1e-7, p);
    }
    void momentsAreThoseOfThePolygammas() {
        LogLaw law(1, 0.25);
        law.addGamma(3, 1).addGamma(7, -1).addBeta(12, 3, -1);
        law.addNormal(0.11);
        law.prepare();
        using boost::math::digamma;
        using boost::math::trigamma;
        NEAR(law.mean(),
             1 + digamma(3.0) - std::log(3.0) - digamma(7.0) + std::log(7.0) - digamma(12.0) + digamma(15.0) +
                 std::log(12.0 / 15.0),
             1e-12, "mean");
        NEAR(law.variance(), 0.36 + trigamma(3.0) + trigamma(7.0) + trigamma(12.0) - trigamma(15.0), 1e-12,
             "variance");
        NEAR(law.logMoment(1), std::log(7.0 / 6) + std::log(14.0 / 11 * 12 / 15) + 1 + 0.18, 1e-12, "e^Y");
        QCOMPARE(law.logMoment(7.5), kInfinity);
        QCOMPARE(law.logMoment(-3.5), kInfinity);
    }
    void risesAndStaysInBounds() {
        LogLaw law(0, 0.02);
        law.addGamma(0.5, 1).addGamma(0.7, -1);
        law.prepare();
        double before = 0;
        for (double y = -400; y < 400; y += 0.37) {
            const double now = law.cumulative(y);
            QVERIFY(now >= before - 1e-11 && now >= 0 && now <= 1);
            NEAR(now + law.complement(y), 1, 1e-10, y);
            QVERIFY(law.density(y) >= 0);
            before = now;
        }
    }
    void quantileUndoesCumulative() {
        LogLaw law(3, 0.5);
        law.addGamma(0.5, 1).addGamma(2, -1).addBeta(30, 2, -1);
        law.prepare();
        for (const double p : {1e-300, 1e-20, 1e-9, 1e-8, 1e-7, 1e-4, 0.2, 0.5, 0.7, 0.99, 0.99999})
            RELATIVE(law.cumulative(law.quantile(p)), p, 1e-7, p);
        for (const double p : {0.0, 1.0, -1.0, 2.0, kNaN})
            QVERIFY(std::isnan(law.quantile(p)));
        QVERIFY(std::isnan(law.cumulative(kNaN)) && std::isnan(law.complement(kNaN)));
        QCOMPARE(law.cumulative(kInfinity), 1.0);
        QCOMPARE(law.complement(-kInfinity), 1.0);
    }
    void fewNodesAreEnough() { // what makes a wash cheap: a change of the method's settings shows here
        LogLaw nine(0, 0.0144);
        nine.addGamma(9.5, 1).addGamma(7, -1);
        nine.prepare();
        QVERIFY2(nine.nodes() >= 20 && nine.nodes() <= 40, qPrintable(QString::number(nine.nodes())));
    }
    void tabulatedNormal() {
        const TabulatedLaw law([](double y) { return -0.5 * (y - 3) * (y - 3) / 0.04; }, -100, 100);
        NEAR(law.quantile(0.95), 3 + 0.2 * 1.6448536269514722, 1e-9, "q95");
        NEAR(law.cumulative(3), 0.5, 1e-10, "middle");
        RELATIVE(law.complement(3 + 0.2 * 6), 9.865876450376946e-10, 1e-6, "tail");
        NEAR(law.meanOf([](double y) { return y * y; }), 9.04, 1e-9, "second moment");
        QCOMPARE(law.cumulative(-99), 0.0);
        QCOMPARE(law.cumulative(99), 1.0);
        QCOMPARE(law.complement(-99), 1.0);
        QCOMPARE(law.complement(99), 0.0);
    }
    void tabulatedFromValues() {
        const TabulatedLaw law({0, 1, 2, 1, 0}, 10, 1);
        NEAR(law.quantile(0.5), 12, 1e-9, "symmetric");
        NEAR(law.cumulative(12), 0.5, 1e-12, "symmetric");
    }
};

QTEST_APPLESS_MAIN(LawTest)
#include "mites_law.moc"
