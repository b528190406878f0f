# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# The load of a wash, by integrate: with bees log-normal, recovery beta and jars gamma,
#   P(load <= x) = E over bees and recovery of P(G/g <= x n c/100),  G ~ gamma(k + 1/2), g ~ gamma(shape)/shape,
# where the inner probability is pbeta(m/(m + shape), k + 1/2, shape) with m = x n c/100 (pgamma for equal jars).
# The program's quantiles are held between R's probabilities a millionth to either side.
source(file.path(dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE)[1])), "common.R"))

set.seed(20261125)
count <- 36
rows <- data.frame(
  mites = c(0, 1, 9, 9, rpois(count - 4, rexp(count - 4, 1 / 12))),
  bees = round(runif(count, 60, 700), 1),
  bees_cv = sample(c(0, 0.02, 0.1, 0.12, 0.3), count, TRUE),
  recovery = round(runif(count, 0.6, 0.98), 3),
  recovery_sd = sample(c(0, 0.03, 0.08), count, TRUE),
  jar_shape = sample(c("inf", "3", "7", "20"), count, TRUE),
  line = round(runif(count, 0.5, 6), 2))
rows$recovery[1] <- 1
rows$recovery_sd[rows$recovery == 1] <- 0

below <- function(x, row, upper = FALSE) {
  shape <- as.numeric(row$jar_shape)
  given <- function(exposure) {
    m <- x * exposure / 100
    if (is.infinite(shape)) pgamma(m, row$mites + 0.5, lower.tail = !upper)
    else pbeta(m / (m + shape), row$mites + 0.5, shape, lower.tail = !upper)
  }
  # Near 0 and 1 integrate cannot reach a relative tolerance and says so; its figure is good all the same.
  precision <- function(f, a, b)
    integrate(f, a, b, rel.tol = 1e-10, abs.tol = 1e-13, subdivisions = 2000, stop.on.error = FALSE)$value
  over_bees <- function(recovery) {
    if (row$bees_cv == 0) return(given(row$bees * recovery))
    s <- sqrt(log(1 + row$bees_cv^2))
    vapply(recovery, function(c) precision(function(z) dnorm(z) * given(c * row$bees * exp(s * z - s^2 / 2)), -9, 9), 0)
  }
  if (row$recovery_sd == 0) return(over_bees(row$recovery))
  size <- row$recovery * (1 - row$recovery) / row$recovery_sd^2 - 1
  a <- row$recovery * size
  b <- (1 - row$recovery) * size
  # Over the quantiles of the beta, so that nothing of its shape near 1 is lost.
  low <- qbeta(1e-16, a, b)
  precision(function(c) dbeta(c, a, b) * over_bees(c), low, 1)
}

answers <- ask(desk, "assess", rows)
chance <- vapply(seq_len(count), function(i) below(rows$line[i], rows[i, ], TRUE), 0)
agree("assess: chance over the line", answers$chance_over, chance, 1e-8)
for (p in c(0.05, 0.5, 0.95)) {
  q <- answers[[sprintf("load_q%02d", round(100 * p))]]
  under <- vapply(seq_len(count), function(i) below(q[i] * (1 - 1e-6), rows[i, ]), 0)
  over <- vapply(seq_len(count), function(i) below(q[i] * (1 + 1e-6), rows[i, ]), 0)
  holds(sprintf("assess: quantile %.2f to a millionth", p), under <= p & p <= over)
}

# The half cup nobody counted scoops of, at the defaults: 9 mites and a line of 3.
s <- sqrt(0.0144)
half <- data.frame(mites = 9, bees = 300 * exp(s^2 / 2), bees_cv = sqrt(exp(s^2) - 1), recovery = 1, recovery_sd = 0,
                   jar_shape = "7", line = 3)
agree("assess: nine mites at the defaults", ask(desk, "assess", data.frame(mites = 9))$chance_over, below(3, half, TRUE), 1e-8)

# Efficacy of one colony, scoops counted: the loads before and after are G/g over their exposures, so their ratio is
# a ratio of beta odds (of gammas for equal jars).
count <- 40
rows <- data.frame(
  before_mites = c(20, 9, 1, 0, rpois(count - 4, 25)), before_bees = round(runif(count, 200, 400)),
  after_mites = c(2, 0, 0, 3, rpois(count - 4, 4)), after_bees = round(runif(count, 200, 400)),
  bees_cv = 0, jar_shape = sample(c("inf", "4", "7", "20"), count, TRUE))
fall_at_most <- function(x, row) {
  shape <- as.numeric(row$jar_shape)
  a1 <- row$before_mites + 0.5
  a2 <- row$after_mites + 0.5
  k <- x * row$after_bees / row$before_bees
  if (is.infinite(shape)) return(pbeta(k / (1 + k), a2, a1))
  f <- function(y) { # y: log odds of the load before
    dens <- a1 * y - (a1 + shape) * log1p(exp(y)) - lbeta(a1, shape)
    exp(dens) * pbeta(plogis(y + log(k)), a2, shape)
  }
  integrate(f, -60 / min(a1, 1), 60, rel.tol = 1e-11, abs.tol = 1e-14, subdivisions = 5000)$value
}
answers <- ask(desk, "efficacy", rows)
agree("efficacy: chance over 0.9", answers$chance_over_90,
      vapply(seq_len(count), function(i) fall_at_most(0.1, rows[i, ]), 0), 1e-8)
for (p in c(0.05, 0.5, 0.95)) {
  e <- answers[[sprintf("efficacy_q%02d", round(100 * p))]]
  above <- vapply(seq_len(count), function(i) fall_at_most(1 - e[i], rows[i, ]), 0)
  # Ten digits of an efficacy near 1 leave fewer of the share that is left.
  slack <- 1e-8 + 1e-9 / (1 - e)
  agree(sprintf("efficacy: quantile %.2f", p), above, rep(1 - p, count), slack)
}
finish(300)
