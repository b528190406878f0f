# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Shared by the comparisons with R: calling the program under test, and counting what agrees.
# R itself is the reference here (base R only): its integrate, pbeta, pgamma, glm and dnbinom.

options(digits = 15, warn = 1)
arguments <- commandArgs(trailingOnly = TRUE)
desk <- arguments[1]
stop_rule_rows <- arguments[2]

checks <- 0
failures <- 0

# Answers of the program to a data frame of rows.
ask <- function(program, words, rows) {
  file <- tempfile(fileext = ".csv")
  on.exit(unlink(file))
  write.csv(rows, file, row.names = FALSE, quote = FALSE, na = "")
  text <- system2(program, c(words, file), stdout = TRUE)
  if (!is.null(attr(text, "status"))) stop("the program ended with exit code ", attr(text, "status"))
  answers <- read.csv(text = sub("\r$", "", text), check.names = FALSE)
  if (nrow(answers) == 0) stop("the program answered nothing")
  answers
}

# Wanted figures and got figures, absolute tolerance each.
agree <- function(what, got, wanted, tolerance) {
  bad <- !(abs(got - wanted) <= tolerance)
  bad[is.na(bad)] <- TRUE
  checks <<- checks + length(bad)
  failures <<- failures + sum(bad)
  worst <- max(abs(got - wanted) / tolerance)
  cat(sprintf("%-48s %5d figures, %d apart, nearest %.3f of the tolerance\n", what, length(bad), sum(bad), worst))
  if (any(bad)) print(head(data.frame(row = which(bad), got = got[bad], wanted = wanted[bad]), 8))
}

# Conditions that have to hold, one a row.
holds <- function(what, condition) {
  condition[is.na(condition)] <- FALSE
  checks <<- checks + length(condition)
  failures <<- failures + sum(!condition)
  cat(sprintf("%-48s %5d conditions, %d broken\n", what, length(condition), sum(!condition)))
  if (any(!condition)) print(head(which(!condition), 8))
}

finish <- function(least) {
  cat(sprintf("%d compared, %d apart, %.1f s\n", checks, failures, proc.time()[["elapsed"]]))
  if (checks < least) {
    cat("too little was compared: something is not being read\n")
    quit(status = 1)
  }
  quit(status = if (failures > 0) 1 else 0)
}
