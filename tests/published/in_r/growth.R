# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Growth of a colony's load. Two references:
# 1. the same posterior by integrate over the level, summed over growth on a grid far finer than its width;
# 2. Poisson regression (glm): with thousands of mites and a wide prior the posterior's mean and spread of growth
#    are the regression's slope and its standard error.
source(file.path(dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE)[1])), "common.R"))

set.seed(20261126)
line <- 3
prior <- c(mean = 0.021, sd = 0.015)

# ---- 1. posterior ----
make_colony <- function(name) {
  washes <- sample(1:5, 1)
  day <- sort(sample(0:120, washes))
  load <- runif(1, 0.1, 2) * exp(rnorm(1, 0.02, 0.015) * day)
  bees <- round(runif(washes, 220, 380))
  data.frame(colony = name, day = day, mites = rnbinom(washes, size = 7, mu = load * bees / 100), bees = bees, bees_cv = 0.1,
             recovery = 1)
}
rows <- do.call(rbind, lapply(sprintf("c%02d", 1:16), make_colony))

posterior <- function(w, shape) {
  E <- w$bees * w$recovery / 100
  size <- 1 / (1 / shape + w$bees_cv^2)
  ref <- sum(E * w$day) / sum(E)
  d <- w$day - ref
  log_post <- function(r, eta) { # eta: a vector
    mu <- outer(eta, seq_along(E), function(h, i) E[i] * exp(h + r * d[i]))
    lik <- dnbinom(matrix(w$mites, length(eta), length(E), byrow = TRUE), size = matrix(size, length(eta), length(E), byrow = TRUE),
                   mu = mu, log = TRUE)
    rowSums(lik) + 0.5 * log(rowSums(mu / (1 + mu / matrix(size, length(eta), length(E), byrow = TRUE)))) +
      dnorm(r, prior[["mean"]], prior[["sd"]], log = TRUE)
  }
  K <- sum(w$mites)
  centre <- log((K + 0.5) / sum(E))
  reach <- c(if (K < 3) -40 else -16, 9) # in eta; the lower tail is exp(eta / 2) where nothing was found
  # Simpson's rule with a node at 0: the chance of having crossed a line has a kink there.
  step <- prior[["sd"]] / 10
  nodes <- -56:84
  stopifnot(min(nodes) * step < prior[["mean"]] - 6.9 * prior[["sd"]], max(nodes) * step > prior[["mean"]] + 6.9 * prior[["sd"]])
  rs <- nodes * step
  weights <- ifelse(nodes %% 2 == 0, 2, 4) / 3
  tops <- vapply(rs, function(r) optimize(function(h) log_post(r, h), centre + reach, maximum = TRUE)$objective, 0)
  top <- max(tops)
  mass <- function(r, low, high) {
    if (high <= low) return(0)
    # In pieces, so that integrate cannot step over the peak.
    knots <- seq(low, high, length.out = 9)
    sum(vapply(1:8, function(i) integrate(function(h) exp(log_post(r, h) - top), knots[i], knots[i + 1], rel.tol = 1e-8,
                                          abs.tol = 1e-13)$value, 0))
  }
  keep <- tops > top - 32 # what is left out weighs less than e^-30
  rs <- rs[keep]
  weights <- weights[keep]
  whole <- weights * vapply(rs, function(r) mass(r, centre + reach[1], centre + reach[2]), 0)
  over <- function(threshold) # threshold: of eta, a function of growth
    sum(weights * vapply(rs, function(r) mass(r, min(max(threshold(r), centre + reach[1]), centre + reach[2]), centre + reach[2]), 0)) /
      sum(whole)
  mean_r <- sum(rs * whole) / sum(whole)
  last <- max(w$day)
  list(mean = mean_r, sd = sqrt(sum((rs - mean_r)^2 * whole) / sum(whole)),
       load_over = function(day, load) over(function(r) log(load) - r * (day - ref)),
       crossed = function(day) over(function(r) min(log(line) - r * (last - ref), log(line) - r * (day - ref))), last = last)
}

words <- c("outlook", "--line", line, "--jar-shape", 7, "--growth-mean", prior[["mean"]], "--growth-sd", prior[["sd"]],
           "--recovery-sd", 0, "--scoop-shared-sd", 0)
answers <- ask(desk, words, rows)
posteriors <- lapply(answers$colony, function(name) posterior(rows[rows$colony == name, ], 7))
each <- function(f) vapply(seq_along(posteriors), function(i) f(posteriors[[i]], answers[i, ]), 0)
agree("outlook: mean growth", answers$growth_mean, each(function(p, a) p$mean), 1e-6)
agree("outlook: sd of growth", answers$growth_sd, each(function(p, a) p$sd), 1e-6)
agree("outlook: chance now", answers$chance_now, each(function(p, a) p$load_over(p$last, line)), 1e-4)
for (days in c(14, 30, 60))
  agree(sprintf("outlook: chance in %d days", days), answers[[sprintf("chance_%dd", days)]],
        each(function(p, a) p$crossed(p$last + days)), 1e-4)
for (q in c("05", "50", "95")) {
  agree(paste("outlook: load now", q), each(function(p, a) p$load_over(p$last, a[[paste0("load_now_q", q)]])),
        rep(1 - as.numeric(q) / 100, nrow(answers)), 1e-4)
  agree(paste("outlook: load in 30 days", q), each(function(p, a) p$load_over(p$last + 30, a[[paste0("load_30d_q", q)]])),
        rep(1 - as.numeric(q) / 100, nrow(answers)), 1e-4)
}
for (q in c("10", "50")) {
  day <- answers[[paste0("cross_day_q", q)]]
  some <- which(is.finite(day) & day > 0 & day < 2000)
  agree(paste("outlook: day of crossing", q), vapply(some, function(i) posteriors[[i]]$crossed(posteriors[[i]]$last + day[i]), 0),
        rep(as.numeric(q) / 100, length(some)), 2e-4)
}

# ---- 2. regression ----
many <- do.call(rbind, lapply(sprintf("m%d", 1:8), function(name) {
  day <- sort(sample(0:100, 5))
  bees <- round(runif(5, 20000, 40000))
  data.frame(colony = name, day = day, mites = rpois(5, runif(1, 0.5, 2) * exp(runif(1, -0.01, 0.04) * day) * bees / 100),
             bees = bees, bees_cv = 0, recovery = 1)
}))
answers <- ask(desk, c("outlook", "--jar-shape", "inf", "--growth-mean", 0, "--growth-sd", 0.05, "--scoop-shared-sd", 0), many)
fits <- lapply(answers$colony, function(name)
  summary(glm(mites ~ day + offset(log(bees / 100)), poisson, many[many$colony == name, ], control = list(epsilon = 1e-12)))$coefficients)
slope <- vapply(fits, function(f) f["day", "Estimate"], 0)
error <- vapply(fits, function(f) f["day", "Std. Error"], 0)
# The posterior's mean and the maximum differ by less than the order of error^2; a fiftieth of an error is ample.
agree("outlook: slope of a Poisson regression", answers$growth_mean, slope, 0.02 * error)
agree("outlook: its standard error", answers$growth_sd, error, 0.01 * error)
finish(200)
