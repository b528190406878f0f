# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Wald's sequential test, from R's own negative binomial (dnbinom, dpois) alone: the evidence of a unit is a difference
# of log probabilities; it is linear in the count, so two counts give the lines; errors and mean length by passing the
# probabilities of all running totals on from unit to unit.
source(file.path(dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE)[1])), "common.R"))

set.seed(20261127)
count <- 24
rows <- data.frame(low = round(runif(count, 0.5, 3), 2), exposure = round(runif(count, 0.8, 4), 3),
                   shape = sample(c("inf", "1.5", "5", "7", "20"), count, TRUE), alpha = sample(c(0.05, 0.1, 0.2), count, TRUE),
                   beta = sample(c(0.05, 0.1, 0.2), count, TRUE), most = sample(4:20, count, TRUE))
rows$high <- rows$low * sample(c(1.5, 2, 3), count, TRUE)

log_chance <- function(k, mean, shape) if (is.infinite(shape)) dpois(k, mean, log = TRUE) else dnbinom(k, size = shape, mu = mean, log = TRUE)

reference <- function(row) {
  shape <- as.numeric(row$shape)
  evidence <- function(k) log_chance(k, row$high * row$exposure, shape) - log_chance(k, row$low * row$exposure, shape)
  per_mite <- evidence(1) - evidence(0)
  up <- log((1 - row$beta) / row$alpha)
  down <- log(row$beta / (1 - row$alpha))
  # Truncated walk at a true load: chance to end high, mean units, chance of a forced verdict.
  walk <- function(load) {
    mean <- load * row$exposure
    top <- qpois(1 - 1e-15, mean) + 60
    if (is.finite(shape)) top <- qnbinom(1e-15, size = shape, mu = mean, lower.tail = FALSE) + 5
    one <- exp(log_chance(0:top, mean, shape))
    at <- 1 # probabilities of running totals 0, 1, ... of those still going
    high <- units <- 0
    for (n in seq_len(row$most)) {
      units <- units + sum(at)
      at <- as.vector(convolve(at, rev(one), type = "open"))
      at[at < 0] <- 0 # rounding of the transform
      total <- per_mite * (seq_along(at) - 1) + n * evidence(0)
      high <- high + sum(at[total >= up])
      at[total >= up | total <= down] <- 0
      at <- at[seq_len(max(which(at > 0), 1))]
    }
    slope <- -evidence(0) / per_mite
    forced <- sum(at)
    c(high + sum(at[seq_along(at) - 1 >= slope * row$most]), units, forced)
  }
  c(-evidence(0) / per_mite, up / per_mite, down / per_mite, per_mite, walk(row$low), walk(row$high))
}

file <- tempfile()
write.table(rows[, c("low", "high", "exposure", "shape", "alpha", "beta", "most")], file, row.names = FALSE, col.names = FALSE,
            quote = FALSE)
text <- system2(stop_rule_rows, stdin = file, stdout = TRUE)
got <- as.matrix(read.table(text = text))
wanted <- t(vapply(seq_len(count), function(i) reference(rows[i, ]), numeric(10)))
names <- c("slope", "upper line", "lower line", "evidence per mite", "chance to end high, load low", "units, load low",
           "forced verdict, load low", "chance to end high, load high", "units, load high", "forced verdict, load high")
for (j in 1:4) agree(paste("stop rule:", names[j]), got[, j], wanted[, j], 1e-9 * abs(wanted[, j]) + 1e-10)
for (j in 5:10) agree(paste("stop rule:", names[j]), got[, j], wanted[, j], 1e-8)
finish(200)
