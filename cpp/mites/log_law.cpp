// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/log_law.h"

#include <algorithm>
#include <array>
#include <boost/math/special_functions/digamma.hpp>
#include <boost/math/special_functions/erf.hpp>
#include <boost/math/special_functions/trigamma.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numbers>

namespace halfcup::mites {

namespace {

using Complex = std::complex<double>;
constexpr double kInfinity = std::numeric_limits<double>::infinity();
// Arguments below are first moved up by the recurrence; then six terms of Stirling's series are exact to
// 1e-15.
constexpr double kStirlingFrom = 10.0;
constexpr double kTailExponent = 28.0;     // exp(-28) = 7e-13: mass that aliasing may fold in
constexpr double kNodeFloor = 1e-14;       // nodes whose weight is below add nothing
constexpr double kSmallProbability = 1e-8; // below: shifted line
constexpr double kStripShare = 0.9;        // how near to a singularity the shifted line may come
constexpr double kCancelled = 10;          // exponent of the digits that cancellation may cost there
constexpr std::size_t kMostNodes = 200000;

double stirlingTail(double z) {
    const double square = 1 / (z * z);
    return (1.0 / 12 +
            square * (-1.0 / 360 +
                      square * (1.0 / 1260 + square * (-1.0 / 1680 +
                                                       square * (1.0 / 1188 - square * (691.0 / 360360)))))) /
           z;
}

// ln(1 + w) for complex w without loss where w is small.
Complex log1pOf(Complex w) {
    const double x = w.real();
    const double y = w.imag();
    return {0.5 * std::log1p(x * (2 + x) + y * y), std::atan2(y, 1 + x)};
}

int stepsUp(double shape) {
    return shape < kStirlingFrom ? static_cast<int>(std::ceil(kStirlingFrom - shape)) : 0;
}

// The library's complex product and logarithm guard against infinities that cannot occur here, at several
// times the cost.
Complex times(Complex a, Complex b) {
    return {a.real() * b.real() - a.imag() * b.imag(), a.real() * b.imag() + a.imag() * b.real()};
}

Complex logOf(Complex w) {
    return {0.5 * std::log(std::norm(w)), std::atan2(w.imag(), w.real())};
}

Complex stirlingTail(Complex z) {
    const Complex inverse = std::conj(z) / std::norm(z);
    const Complex square = times(inverse, inverse);
    Complex sum = 1.0 / 1188 - square * (691.0 / 360360);
    for (const double coefficient : {-1.0 / 1680, 1.0 / 1260, -1.0 / 360, 1.0 / 12})
        sum = coefficient + times(square, sum);
    return times(inverse, sum);
}

// ln Gamma(z + s) - ln Gamma(z) - s ln z, up to multiples of 2 pi i (it is only ever exponentiated).
// stirlingAtShape is the tail at the shape moved up by stepsUp(shape).
Complex logGammaStep(double shape, Complex s, double stirlingAtShape) {
    int up = stepsUp(shape);
    if (shape + s.real() <
        std::min(shape, kStirlingFrom)) { // the shifted argument needs more steps than the shape
        up = stepsUp(shape + s.real());
        stirlingAtShape = stirlingTail(shape + up);
    }
    const double z = shape + up;
    Complex result = times(z - 0.5 + s, log1pOf(s / z)) - s + (stirlingTail(z + s) - stirlingAtShape);
    if (up > 0) {
        Complex product = 1;
        for (int j = 0; j < up; ++j)
            product = times(product, 1.0 + s / (shape + j));
        result += s * std::log(z / shape) - logOf(product);
    }
    return result;
}

double psi(double z) {
    return boost::math::digamma(z);
}
// ln z - psi(z) without loss for large z.
double psiMinusLog(double z) {
    if (z < 1e3)
        return psi(z) - std::log(z);
    return -0.5 / z - 1.0 / (12 * z * z) + 1.0 / (120 * z * z * z * z);
}
double psi1(double z) {
    return z < 1e15 ? boost::math::trigamma(z) : 1 / z;
}

} // namespace

LogLaw::LogLaw(double location, double variance)
    : m_location(location)
    , m_normal(variance)
    , m_left(kInfinity)
    , m_right(kInfinity) {
    m_terms.reserve(8);
}

void LogLaw::add(double shape, int direction, int power) {
    const double z = shape + stepsUp(shape);
    m_terms.push_back({shape, direction, power, stirlingTail(z)});
    if (power > 0)
        (direction > 0 ? m_left : m_right) = std::min(direction > 0 ? m_left : m_right, shape);
}

LogLaw& LogLaw::addGamma(double shape, int direction) {
    add(shape, direction, 1);
    return *this;
}

LogLaw& LogLaw::addBeta(double a, double b, int direction) {
    add(a, direction, 1);
    add(a + b, direction, -1);
    return *this;
}

LogLaw& LogLaw::addNormal(double variance) {
    m_normal += variance;
    return *this;
}

LogLaw& LogLaw::shift(double by) {
    m_location += by;
    m_mean += by;
    m_low += by;
    m_high += by;
    return *this;
}

Complex LogLaw::logTransform(Complex s) const {
    Complex result = 0.5 * m_normal * times(s, s);
    for (const Term& term : m_terms) {
        const Complex step = logGammaStep(term.shape, term.direction > 0 ? s : -s, term.stirling);
        result += term.power > 0 ? step : -step;
    }
    return result;
}

double LogLaw::logMoment(double s) const {
    if (!(s > -m_left && s < m_right))
        return kInfinity;
    return logTransform(Complex(s, 0)).real() + s * m_location;
}

double LogLaw::meanAt(double s, double* varianceAt) const {
    double mean = m_location + m_normal * s;
    double variance = m_normal;
    for (const Term& term : m_terms) {
        const double z = term.shape + term.direction * s;
        mean += term.power * term.direction * (psiMinusLog(z) + std::log1p(term.direction * s / term.shape));
        variance += term.power * psi1(z);
    }
    *varianceAt = std::max(variance, std::numeric_limits<double>::min());
    return mean;
}

// A point beyond which at most exp(-kTailExponent) of Y lies (Chernoff), on the left (-1) or the right (+1).
double LogLaw::edge(int side) const {
    const double strip = side < 0 ? m_left : m_right;
    const double gaussian = std::sqrt(2 * kTailExponent / m_variance);
    double best = kInfinity;
    for (const double factor : {0.25, 0.5, 0.75, 1.0, 1.5, 2.5}) {
        const double s = std::min(factor * gaussian, 0.98 * strip);
        const double bound = (kTailExponent + logMoment(side * s) - side * s * m_location) / s;
        best = std::min(best, bound);
    }
    return m_location + side * best;
}

void LogLaw::prepare() {
    m_mean = meanAt(0, &m_variance);
    m_low = edge(-1);
    m_high = edge(1);
    m_step = 2 * std::numbers::pi / (m_high - m_low);
    m_nodes.clear();
    for (std::size_t j = 0; j < kMostNodes; ++j) {
        const double t = (static_cast<double>(j) + 0.5) * m_step;
        const Complex value = std::exp(logTransform(Complex(0, t)));
        m_nodes.push_back(value);
        if (std::abs(value.real()) + std::abs(value.imag()) < kNodeFloor)
            break;
    }
}

LogLaw::Sums LogLaw::sums(double y) const {
    const double angle = m_step * (y - m_location);
    const Complex turn(std::cos(angle), -std::sin(angle));
    Complex phase(std::cos(0.5 * angle), -std::sin(0.5 * angle));
    double below = 0;
    double density = 0;
    double half = 0.5;
    for (const Complex& node : m_nodes) {
        const double re = node.real() * phase.real() - node.imag() * phase.imag();
        const double im = node.real() * phase.imag() + node.imag() * phase.real();
        below += im / half;
        density += re;
        half += 1;
        phase = Complex(phase.real() * turn.real() - phase.imag() * turn.imag(),
                        phase.real() * turn.imag() + phase.imag() * turn.real());
    }
    return {0.5 - below / std::numbers::pi, density * m_step / std::numbers::pi};
}

// P(Y > y) for side +1, P(Y < y) for side -1, on the line Re s = c through (or near) the saddle point.
double LogLaw::tail(double y, int side) const {
    const double strip = side < 0 ? m_left : m_right;
    double low = 0;
    // Near the singularity the line needs many nodes, far from it the sum cancels: at most exp(kCancelled) is
    // lost.
    const double keep = std::min((1 - kStripShare) * strip, kCancelled / std::abs(y - m_mean));
    double high = std::isfinite(strip) ? strip - keep : 1;
    double spread = 0;
    if (!std::isfinite(strip))
        while (high < 1e300 && side * (meanAt(side * high, &spread) - y) < 0)
            high *= 2;
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (side * (meanAt(side * middle, &spread) - y) < 0 ? low : high) = middle;
    }
    const double c = high;
    meanAt(side * c, &spread);
    const double room = std::min(c, std::isfinite(strip) ? strip - c : kInfinity);
    const double step = std::min(2 * std::numbers::pi * room / 32, std::numbers::pi / 4 / std::sqrt(spread));
    const double scale = logMoment(side * c) - side * c * y;
    if (scale < -740)
        return 0;
    double sum = 0;
    for (std::size_t j = 0; j < kMostNodes; ++j) {
        const Complex s(side * c, (static_cast<double>(j) + 0.5) * step);
        const Complex value =
            std::exp(logTransform(s) + s * (m_location - y) - scale) / (static_cast<double>(side) * s);
        sum += value.real();
        if (std::abs(value.real()) + std::abs(value.imag()) < 1e-16 / c)
            break;
    }
    return std::clamp(std::exp(scale) * sum * step / std::numbers::pi, 0.0, 1.0);
}

double LogLaw::cumulative(double y) const {
    if (std::isnan(y))
        return y;
    if (std::isinf(y))
        return y > 0 ? 1 : 0;
    if (y <= m_low)
        return tail(y, -1);
    if (y >= m_high)
        return 1 - tail(y, 1);
    const double below = sums(y).below;
    return below < kSmallProbability ? tail(y, -1) : std::min(below, 1.0);
}

double LogLaw::complement(double y) const {
    if (std::isnan(y))
        return y;
    if (std::isinf(y))
        return y > 0 ? 0 : 1;
    if (y <= m_low)
        return 1 - tail(y, -1);
    if (y >= m_high)
        return tail(y, 1);
    const double above = 1 - sums(y).below;
    return above < kSmallProbability ? tail(y, 1) : std::min(above, 1.0);
}

double LogLaw::density(double y) const {
    return y > m_low && y < m_high ? std::max(0.0, sums(y).density) : 0.0;
}

double LogLaw::quantile(double p) const {
    if (!(p > 0 && p < 1))
        return std::numeric_limits<double>::quiet_NaN();
    const bool lower = p < 0.5;
    const double aim = lower ? p : 1 - p;
    if (aim <
        10 * kSmallProbability) { // the far tails: bracket and close in on the logarithm of the probability
        const int side = lower ? -1 : 1;
        const auto gap = [&](double y) {
            const double value = lower ? cumulative(y) : complement(y);
            return side * (std::log(std::max(value, 1e-320)) - std::log(aim));
        };
        double inner = m_mean;
        double outer = side < 0 ? m_low : m_high;
        for (int i = 0; i < 60 && side * gap(outer) > 0; ++i)
            outer += outer - m_mean;
        std::uintmax_t most = 100;
        const auto range =
            boost::math::tools::toms748_solve(gap, std::min(inner, outer), std::max(inner, outer),
                                              boost::math::tools::eps_tolerance<double>(45), most);
        return 0.5 * (range.first + range.second);
    }
    // Newton on the logarithm of the smaller tail (log-concave, so it does not run away), kept inside a
    // bracket.
    double low = m_low;
    double high = m_high;
    double y = std::clamp(m_mean + std::sqrt(2 * m_variance) * boost::math::erf_inv(2 * p - 1), low, high);
    for (int i = 0; i < 100; ++i) {
        const Sums at = sums(y);
        const double value = lower ? at.below : 1 - at.below;
        ((value < aim) == lower ? low : high) = y;
        double next = 0.5 * (low + high);
        if (value > 0 && at.density > 0) {
            const double newton = y + (lower ? 1 : -1) * std::log(aim / value) * value / at.density;
            if (newton > low && newton < high)
                next = newton;
        }
        const double moved = std::abs(next - y);
        y = next;
        if (moved < 1e-10 * (1 + std::abs(y - m_location)) * std::min(1.0, std::sqrt(m_variance)))
            break;
    }
    return y;
}

} // namespace halfcup::mites
