# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# The posterior of cpp/mites/wash_load.h by adaptive integration: P(load <= x) is the integral over ln(bees), and over
# ln(recovery) where it is uncertain, of the incomplete beta (or gamma) function; quantiles by uniroot.
# Arguments: mites bees cv recovery sd shape, again and again. One line out for each: q05 q50 q95 P(> 3) microseconds.
wash <- function(k, bees, cv, recovery, sd, shape) {
    s <- sqrt(log(1 + cv^2))
    given <- function(x, exposure, lower) {
        mu <- x * exposure
        if (is.infinite(shape)) pgamma(mu, k + 0.5, lower.tail = lower)
        else pbeta(mu / (mu + shape), k + 0.5, shape, lower.tail = lower)
    }
    overBees <- function(x, share, lower)
        integrate(function(z) dnorm(z) * given(x, bees / 100 * exp(s * z - s^2 / 2) * share, lower), -9, 9,
                  rel.tol = 1e-10, abs.tol = 0, subdivisions = 1000)$value
    chance <- function(x, lower = TRUE) {
        if (sd == 0) return(overBees(x, recovery, lower))
        nu <- recovery * (1 - recovery) / sd^2 - 1
        a <- recovery * nu
        b <- (1 - recovery) * nu
        integrate(function(y) sapply(y, function(v) {
            share <- plogis(v)
            exp(a * plogis(v, log.p = TRUE) + b * plogis(-v, log.p = TRUE) - lbeta(a, b)) * overBees(x, share, lower)
        }), qlogis(1e-14), 45, rel.tol = 1e-9, abs.tol = 0, subdivisions = 1000)$value
    }
    quantile <- function(p) {
        centre <- log((k + 0.5) / (bees / 100 * recovery))
        exp(uniroot(function(l) chance(exp(l)) - p, centre + c(-2, 2), extendInt = "upX", tol = 1e-9)$root)
    }
    c(quantile(0.05), quantile(0.5), quantile(0.95), chance(3, FALSE))
}
given <- matrix(as.numeric(commandArgs(trailingOnly = TRUE)), nrow = 6)
for (i in seq_len(ncol(given))) {
    start <- proc.time()[["elapsed"]]
    runs <- if (given[5, i] == 0) 3 else 1
    for (j in seq_len(runs)) answer <- do.call(wash, as.list(given[, i]))
    taken <- (proc.time()[["elapsed"]] - start) / runs * 1e6
    cat(sprintf("%.15g %.15g %.15g %.15g %.0f\n", answer[1], answer[2], answer[3], answer[4], taken))
}
