#!/bin/sh
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# run.sh SCRIPT PROGRAM STOP_RULE_ROWS: one comparison with R; exit code 77 (skipped) where R is absent.
if ! command -v Rscript > /dev/null; then
    echo "skipped: Rscript (Debian: r-base-core) is not installed."
    exit 77
fi
exec Rscript --vanilla "$@"
