# Recomputes the headline figures of a published seed trial from its counts and measurements, in base R
# only and apart from the program that made the report, and compares them with analysis.json.
#
#   Rscript analysis.R          in the folder that holds counts-long.csv, measurements-long.csv and analysis.json
#
# It stops with an error where a figure differs by more than 1e-6 (relative to the figure where that is above 1);
# otherwise it prints how many agree. Which sowings enter an outcome, and which of them make up one unit, is read
# from analysis.json (results, values); every number of such a unit is worked out again here.
# The sections carry the numbers of the methods page.

tolerance <- 1e-6
agreed <- 0
differences <- character()
left_aside <- character()

# ---- Reading -----------------------------------------------------------------------------------

# JSON as R lists: null becomes NA, arrays and objects become lists.
read_json <- function(file) {
  text <- paste(readLines(file, encoding = "UTF-8", warn = FALSE), collapse = "\n")
  pattern <- '"[^"\\\\]*+(?:\\\\.[^"\\\\]*+)*+"|-?[0-9][0-9.eE+-]*|true|false|null|[][{}:,]'
  tokens <- regmatches(text, gregexpr(pattern, text, perl = TRUE))[[1]]
  position <- 0
  following <- function() {
    position <<- position + 1
    tokens[position]
  }
  text_of <- function(token) {
    inside <- substr(token, 2, nchar(token) - 1)
    if (!grepl("\\", inside, fixed = TRUE)) return(inside)
    escapes <- gregexpr("\\\\(u[0-9a-fA-F]{4}|.)", inside)
    regmatches(inside, escapes) <- lapply(regmatches(inside, escapes), function(all) vapply(all, unescaped, ""))
    inside
  }
  unescaped <- function(escape) {
    letter <- substr(escape, 2, 2)
    if (letter == "u") return(intToUtf8(strtoi(substr(escape, 3, 6), 16)))
    known <- c(n = "\n", t = "\t", r = "\r", b = "\b", f = "\f")
    if (letter %in% names(known)) known[[letter]] else letter
  }
  value <- function(token) {
    first <- substr(token, 1, 1)
    if (first == '"') return(text_of(token))
    if (first == "{" || first == "[") return(members(first == "{"))
    if (first %in% c("t", "f")) return(token == "true")
    if (first == "n") return(NA)
    as.numeric(token)
  }
  members <- function(named) {
    found <- list()
    repeat {
      token <- following()
      if (token %in% c("}", "]")) return(found)
      if (token == ",") token <- following()
      if (named) {
        name <- text_of(token)
        following() # the colon
        found[name] <- list(value(following()))
      } else {
        found <- c(found, list(value(token)))
      }
    }
  }
  value(following())
}

# A long table, numbers as numbers. An apostrophe that keeps spreadsheets from running a cell is taken off.
read_table <- function(file, numbers) {
  if (!file.exists(file)) return(NULL)
  table <- read.csv(file, colClasses = "character", na.strings = "", check.names = FALSE, encoding = "UTF-8")
  table[] <- lapply(table, function(column) sub("^'('*[-=+@\t\r\n])", "\\1", column))
  table[numbers] <- lapply(table[numbers], as.numeric)
  table
}

# What stands at a path in a list; NA where there is nothing.
at <- function(x, ...) {
  for (name in c(...)) {
    if (!is.list(x) || is.null(x[[name]])) return(NA)
    x <- x[[name]]
  }
  if (is.list(x)) NA else x
}

# ---- Comparing ---------------------------------------------------------------------------------

# Each figure worked out here beside the published one; NA stands for null.
agree <- function(what, mine, published) {
  for (name in union(names(mine), names(published))) {
    a <- if (name %in% names(mine)) unname(mine[[name]]) else NA
    b <- if (name %in% names(published)) unname(published[[name]]) else NA
    if (is.na(a) && is.na(b)) next
    if (!is.na(a) && !is.na(b) && abs(a - b) <= tolerance * max(1, abs(b))) {
      agreed <<- agreed + 1
    } else {
      differences <<- c(differences, sprintf("%s, %s: published %.10g, recomputed %.10g", what, name, b, a))
    }
  }
}

leave_aside <- function(what) left_aside <<- union(left_aside, what)

# ---- 1 and 5: one unit -------------------------------------------------------------------------

# Seeds germinated in a sowing up to a day: as counted on it, or all of them if all had germinated before.
total_on <- function(sowing, day) {
  checks <- counts[counts$sowing == sowing & !is.na(counts$germinated) & counts$day <= day, ]
  if (nrow(checks) == 0) return(NA)
  last <- checks[which.max(checks$day), ]
  if (last$day == day || isTRUE(last$germinated == last$seeds)) last$germinated else NA
}

# Counts of several sowings added up, for the days on which all are known.
checks_of <- function(sowings, until) {
  seen <- counts$day[counts$sowing %in% sowings & !is.na(counts$germinated) & counts$day <= until]
  days <- sort(unique(c(seen, until)))
  total <- vapply(days, function(day) sum(vapply(sowings, total_on, 0, day = day)), 0)
  known <- !is.na(total)
  later <- known & days > 0
  list(day = days[later], total = total[later], newly = diff(c(0, total[later])), last = tail(total[known], 1))
}

# The day by which a share of the finally germinated was there, on a straight line between two checks;
# NA where it was there at the first check, at an unknown time before it (Farooq et al. 2005).
time_to <- function(checks, share) {
  goal <- share * max(checks$total, 0)
  i <- which(checks$total >= goal)[1]
  if (goal == 0 || is.na(i) || i == 1) return(NA)
  checks$day[i - 1] + (goal - checks$total[i - 1]) / checks$newly[i] * (checks$day[i] - checks$day[i - 1])
}

# The last check before and the first at or after a share: all that the checks really say.
bracket_of <- function(checks, share = 0.5) {
  goal <- share * max(checks$total, 0)
  if (goal == 0) return(c(NA, NA))
  i <- which(checks$total >= goal)[1]
  c(if (i == 1) 0 else checks$day[i - 1], checks$day[i])
}

# What the checks allow for a time: when half was up; for a spread, how long from a quarter to three quarters.
time_bracket <- function(measure, checks) {
  if (measure != "spread") return(bracket_of(checks))
  first <- bracket_of(checks, 0.25)
  last <- bracket_of(checks, 0.75)
  c(max(0, last[1] - first[2]), last[2] - first[1])
}

# Checks too far apart to read a time off: one gap (for T50 the one that holds half) holds more than 0.6 of all.
is_coarse <- function(measure, checks) {
  gap <- checks$newly > 0.6 * sum(checks$newly)
  if (measure == "t50") gap <- gap & checks$day == bracket_of(checks)[2]
  any(gap)
}

unit_value <- function(measure, checks, seeds, plants) {
  total <- max(checks$total, 0)
  switch(measure,
    germination = ,
    storage = 100 * total / seeds,
    t50 = time_to(checks, 0.5),
    mgt = if (total == 0) NA else sum(checks$newly * checks$day) / total,
    spread = time_to(checks, 0.75) - time_to(checks, 0.25),
    maguire = 100 * sum(checks$newly / checks$day) / seeds, # Maguire 1962, per 100 seeds sown
    trait = if (length(plants) == 0) NA else mean(plants)
  )
}

# The units of a result as they were read, each with its numbers worked out anew and compared.
units_of <- function(result) {
  lapply(result$values, function(published) {
    sowings <- unlist(published$sowings)
    day <- at(result, "days", published$lot)
    unit <- list(lot = published$lot, treatment = published$treatment, stored = published$stored,
      block = published$block, id = published$unit, sowings = sowings)
    name <- sprintf("%s, unit %s", result$outcome, published$unit)
    if (result$measure == "moisture") { # weighings have no long table: the units' values are taken as published
      leave_aside("moisture of single batches (weighings.csv)")
      return(c(unit, value = published$value, seeds = NA, count = NA))
    }
    if (result$measure == "trait") {
      rows <- measurements[measurements$sowing %in% sowings & measurements$day == day &
        measurements$trait == result$column & !is.na(measurements$value), ]
      value <- unit_value("trait", NULL, NA, rows$value)
      agree(name, c(value = value, plants = nrow(rows)), c(value = published$value, plants = published$plants))
      return(c(unit, value = value, seeds = NA, count = NA, plants = nrow(rows)))
    }
    seeds <- sum(counts$seeds[match(sowings, counts$sowing)])
    checks <- checks_of(sowings, day)
    value <- unit_value(result$measure, checks, seeds, NULL)
    agree(name, c(seeds = seeds, count = checks$last, value = value),
      c(seeds = published$seeds, count = published$count, value = published$value))
    c(unit, value = value, seeds = seeds, count = checks$last, plants = checks$last)
  })
}

# ---- Distributions of shares: 1 and 2 ----------------------------------------------------------

# Wilson (1927) score interval with q in place of z and n the effective number of seeds.
wilson <- function(p, n, q) {
  centre <- (p + q^2 / (2 * n)) / (1 + q^2 / n)
  spread <- q * sqrt(p * (1 - p) / n + q^2 / (4 * n^2)) / (1 + q^2 / n)
  c(if (p == 0) 0 else centre - spread, if (p == 1) 1 else centre + spread)
}

# Difference of two shares: Newcombe (1998) hybrid score, his method 10.
newcombe <- function(pt, nt, pc, nc, q) {
  t <- wilson(pt, nt, q)
  c <- wilson(pc, nc, q)
  c((pt - pc) - sqrt((pt - t[1])^2 + (c[2] - pc)^2), (pt - pc) + sqrt((t[2] - pt)^2 + (pc - c[1])^2))
}

# How much more the units of the same treatment differ than seed luck makes them: Pearson's X2 within groups, with
# one degree of freedom that holds 2 added, so that two trays that agree by luck do not look sure.
dispersion_of <- function(groups) {
  x2 <- 0
  df <- 0
  for (g in groups) {
    p <- sum(g$x) / sum(g$n)
    if (is.na(p) || p <= 0 || p >= 1) next
    x2 <- x2 + sum((g$x - g$n * p)^2 / (g$n * p * (1 - p)))
    df <- df + length(g$x) - 1
  }
  if (df == 0) return(c(phi = NA, df = 0, used = 2, dfUsed = 2))
  c(phi = x2 / df, df = df, used = max(1, (x2 + 2) / (df + 1)), dfUsed = max(2, df + 1))
}

effects <- function(xt, nt, xc, nc) {
  pt <- xt / nt
  pc <- xc / nc
  cells <- c(xt, nt - xt, xc, nc - xc)
  none <- (xt == 0 && xc == 0) || (xt == nt && xc == nc)
  if (any(cells == 0)) cells <- cells + 0.5 # Haldane 1956
  c(riskRatio = if (xt == 0 || xc == 0) NA else pt / pc,
    oddsRatio = if (none) NA else cells[1] * cells[4] / (cells[2] * cells[3]),
    cohensH = 2 * asin(sqrt(pt)) - 2 * asin(sqrt(pc)))
}

# The difference that such a trial shows four times in five; of the two directions the larger that exists.
detectable_share <- function(nt, nc, p0, phi, nu) {
  multiple <- qt(0.975, nu) + qt(0.8, nu)
  towards <- function(sign) {
    gap <- function(d) {
      p1 <- p0 + sign * d
      d - multiple * sqrt(phi * (p0 * (1 - p0) / nc + p1 * (1 - p1) / nt))
    }
    room <- if (sign > 0) 1 - p0 else p0
    if (gap(room) < 0) NA else uniroot(gap, c(1e-12, room), tol = 1e-14)$root
  }
  found <- c(towards(1), towards(-1))
  if (all(is.na(found))) NA else 100 * max(found, na.rm = TRUE)
}

# ---- Permutation tests: 2, 3 and 6 -------------------------------------------------------------

# Two-sided; differences within 1e-9 of the largest are equal. NA where not even the most extreme arrangement
# has p of 0.05 or less.
permutation_p <- function(observed, all) {
  share <- function(limit) mean(abs(all) >= limit - 1e-9 * max(abs(all)))
  if (share(max(abs(all))) > 0.05) return(c(arrangements = NA, permutationP = NA))
  c(arrangements = length(all), permutationP = share(abs(observed)))
}

# Every way to deal the two treatments to the units, where there are 50 000 or fewer.
dealt_anew <- function(units, first, difference) {
  if (choose(units, first) > 50000) return(NULL)
  permutation_p(difference(seq_len(first)), combn(units, first, difference))
}

# Every way to swap the treatments within blocks, from 6 to 15 blocks.
swapped <- function(d) {
  b <- length(d)
  if (b < 6) return(c(arrangements = NA, permutationP = NA))
  if (b > 15) return(NULL)
  signs <- as.matrix(expand.grid(rep(list(c(1, -1)), b)))
  permutation_p(mean(d), drop(signs %*% d) / b)
}

# ---- Germination compared: 2, 3 and 4 ----------------------------------------------------------

both_levels <- function(limits) {
  wide <- limits(0.95)
  narrow <- limits(0.9)
  c(lower = wide[1], upper = wide[2], lower90 = narrow[1], upper90 = narrow[2])
}

germination_pair <- function(t, c, dispersion) {
  xt <- sum(t$x); nt <- sum(t$n); xc <- sum(c$x); nc <- sum(c$n)
  pt <- xt / nt; pc <- xc / nc
  common <- c(estimate = 100 * (pt - pc), effects(xt, nt, xc, nc))
  if (length(t$x) == 1 || length(c$x) == 1) { # seed luck only: nothing is tested
    limits <- function(level) 100 * newcombe(pt, nt, pc, nc, qnorm((1 + level) / 2))
    return(c(common, both_levels(limits), tipping = tipping(pt, nt, pc, nc)))
  }
  used <- dispersion[["used"]]
  nu <- dispersion[["dfUsed"]]
  limits <- function(level) 100 * newcombe(pt, nt / used, pc, nc / used, qt((1 + level) / 2, nu))
  table <- matrix(c(xt, nt - xt, xc, nc - xc), 2)
  chi2 <- if (any(rowSums(table) == 0)) 0 else unname(suppressWarnings(chisq.test(table, correct = FALSE)$statistic))
  x <- c(t$x, c$x)
  n <- c(t$n, c$n)
  permuted <- dealt_anew(length(x), length(t$x), function(i) sum(x[i]) / sum(n[i]) - sum(x[-i]) / sum(n[-i]))
  c(common, both_levels(limits), dispersion, statistic = chi2 / used, df1 = 1, df2 = nu,
    p = pf(chi2 / used, 1, nu, lower.tail = FALSE), permuted,
    detectable = detectable_share(nt, nc, (xc + 0.5) / (nc + 1), used, nu))
}

# How alike seeds of one tray would have to be (Kish 1965) for the interval to take in zero.
tipping <- function(pt, nt, pc, nc) {
  clear <- function(rho) {
    limits <- newcombe(pt, nt / (1 + (nt - 1) * rho), pc, nc / (1 + (nc - 1) * rho), qnorm(0.975))
    if (pt >= pc) limits[1] else -limits[2]
  }
  if (clear(0) <= 0 || clear(1) > 0) NA else uniroot(clear, c(0, 1), tol = 1e-14)$root
}

# x and n of each treatment by block.
germination_blocks <- function(t, c) {
  b <- length(t$x)
  shrunk <- function(g) (sum(g$x) + 0.5) / (sum(g$n) + 1)
  luck <- function(g) shrunk(g) * (1 - shrunk(g)) * mean(1 / g$n)
  v <- luck(t) + luck(c)
  pt <- mean(t$x / t$n); pc <- mean(c$x / c$n)
  d <- t$x / t$n - c$x / c$n
  phi <- var(d) / v
  used <- max(1, (2 + (b - 1) * phi) / b)
  nt <- b^2 / sum(1 / t$n); nc <- b^2 / sum(1 / c$n)
  statistic <- mean(d)^2 / (used * v / b)
  limits <- function(level) 100 * newcombe(pt, nt / used, pc, nc / used, qt((1 + level) / 2, b))
  c(estimate = 100 * (pt - pc), both_levels(limits), effects(sum(t$x), sum(t$n), sum(c$x), sum(c$n)),
    phi = phi, df = b - 1, used = used, dfUsed = b, statistic = statistic, df1 = 1, df2 = b,
    p = pf(statistic, 1, b, lower.tail = FALSE), swapped(d), detectable = detectable_share(nt, nc, shrunk(c), used, b))
}

# lots: each with groups t and c; Mantel-Haenszel weights, one dispersion.
germination_pooled <- function(lots, dispersion) {
  used <- dispersion[["used"]]
  nu <- dispersion[["dfUsed"]]
  shrunk <- function(g) (sum(g$x) + 0.5) / (sum(g$n) + 1)
  d <- sapply(lots, function(l) sum(l$t$x) / sum(l$t$n) - sum(l$c$x) / sum(l$c$n))
  w <- sapply(lots, function(l) sum(l$t$n) * sum(l$c$n) / (sum(l$t$n) + sum(l$c$n)))
  v <- sapply(lots, function(l) shrunk(l$t) * (1 - shrunk(l$t)) / sum(l$t$n) + shrunk(l$c) * (1 - shrunk(l$c)) / sum(l$c$n))
  estimate <- sum(w * d) / sum(w)
  se <- sqrt(used * sum(w^2 * v)) / sum(w)
  limits <- function(level) 100 * pmax(-1, pmin(1, estimate + c(-1, 1) * qt((1 + level) / 2, nu) * se))
  between <- sum((d - sum(d / v) / sum(1 / v))^2 / v) / ((length(d) - 1) * used)
  c(estimate = 100 * estimate, both_levels(limits), dispersion, statistic = (estimate / se)^2, df1 = 1, df2 = nu,
    p = 2 * pt(-abs(estimate / se), nu), lots_differ(between, length(d) - 1, nu))
}

lots_differ <- function(f, df1, df2) {
  c(lotsStatistic = f, lotsDf1 = df1, lotsDf2 = df2, lotsP = pf(f, df1, df2, lower.tail = FALSE))
}

# ---- Means of units compared: 3, 4, 5 and 6 ----------------------------------------------------

# With coarse checks the interval takes in what the checks allow; Welch's own is kept beside it.
widened <- function(limits, coarse, bracket) {
  own <- both_levels(limits)
  if (!coarse || any(is.na(bracket))) return(own)
  hull <- c(pmin(own[c(1, 3)], bracket[1]), pmax(own[c(2, 4)], bracket[2]))[c("lower", "upper", "lower90", "upper90")]
  c(hull, welchLower = own[["lower"]], welchUpper = own[["upper"]])
}

varies <- function(values, size = values) diff(range(values)) > 1e-12 * max(abs(size))

# What is shown with power 0.8 at 5 %, from the noncentral t, for a standard error and its degrees of freedom.
detectable_mean <- function(se, df) {
  power <- function(ncp) {
    critical <- qt(0.975, df)
    suppressWarnings(pt(critical, df, ncp, lower.tail = FALSE) + pt(-critical, df, ncp)) - 0.8
  }
  se * uniroot(power, c(0, 37), tol = 1e-12)$root
}

# Hedges (1981); the limits are those of the noncentral t for d, not multiplied by J.
hedges <- function(t, c) {
  df <- length(t) + length(c) - 2
  pooled <- sqrt(((length(t) - 1) * var(t) + (length(c) - 1) * var(c)) / df)
  unit <- sqrt(1 / length(t) + 1 / length(c))
  d <- (mean(t) - mean(c)) / pooled
  limit <- function(p) { # NaN beyond 37, where R's pt stops following the noncentral t
    miss <- function(ncp) suppressWarnings(pt(d / unit, df, ncp)) - p
    if (miss(-37) < 0 || miss(37) > 0) NaN else uniroot(miss, c(-37, 37), tol = 1e-12)$root * unit
  }
  c(g = d * (1 - 3 / (4 * df - 1)), gLower = limit(0.975), gUpper = limit(0.025))
}

means_pair <- function(t, c, coarse, bracket) {
  nt <- length(t); nc <- length(c)
  if (nt == 0 || nc == 0 || any(is.na(c(t, c)))) return(bracket)
  common <- c(estimate = mean(t) - mean(c), bracket)
  if (min(nt, nc) == 1) return(common)
  common <- c(common, hodgesLehmann = median(outer(t, c, "-")))
  if (!varies(t) && !varies(c)) return(common)
  test <- t.test(t, c) # Welch 1947
  limits <- function(level) as.vector(t.test(t, c, conf.level = level)$conf.int)
  values <- c(t, c) - mean(c(t, c))
  permuted <- dealt_anew(nt + nc, nt, function(i) mean(values[i]) - mean(values[-i]))
  pooled <- sqrt(((nt - 1) * var(t) + (nc - 1) * var(c)) / (nt + nc - 2))
  c(common, widened(limits, coarse, bracket), hedges(t, c), statistic = unname(test$statistic),
    df1 = unname(test$parameter), p = test$p.value, permuted,
    detectable = detectable_mean(pooled * sqrt(1 / nt + 1 / nc), test$parameter[[1]]))
}

means_blocks <- function(t, c, coarse, bracket) {
  d <- t - c
  b <- length(d)
  common <- c(estimate = mean(d), bracket)
  if (!varies(d, c(t, c))) return(common)
  test <- t.test(d)
  limits <- function(level) as.vector(t.test(d, conf.level = level)$conf.int)
  c(common, widened(limits, coarse, bracket), statistic = unname(test$statistic), df1 = b - 1, p = test$p.value,
    swapped(d), detectable = detectable_mean(sd(d) / sqrt(b), b - 1))
}

means_pooled <- function(lots, coarse, bracket) {
  groups <- unlist(lapply(lots, function(l) list(l$t, l$c)), recursive = FALSE)
  df <- sum(lengths(groups) - 1)
  s2 <- sum(sapply(groups, function(g) sum((g - mean(g))^2))) / df
  d <- sapply(lots, function(l) mean(l$t) - mean(l$c))
  w <- weights_of(lots)
  estimate <- sum(w * d) / sum(w)
  if (s2 == 0) return(c(estimate = estimate, bracket))
  se <- sqrt(s2 / sum(w))
  limits <- function(level) estimate + c(-1, 1) * qt((1 + level) / 2, df) * se
  c(estimate = estimate, bracket, widened(limits, coarse, bracket), statistic = estimate / se, df1 = df,
    p = 2 * pt(-abs(estimate / se), df), lots_differ(sum(w * (d - estimate)^2) / ((length(d) - 1) * s2), length(d) - 1, df))
}

weights_of <- function(lots) sapply(lots, function(l) length(l$t) * length(l$c) / (length(l$t) + length(l$c)))

# ---- A result ----------------------------------------------------------------------------------

same_time <- function(a, b) (is.na(a) && is.na(b)) || isTRUE(a == b)

group_of <- function(units, lot, treatment, stored) {
  Filter(function(u) u$lot == lot && u$treatment == treatment && same_time(u$stored, stored), units)
}

numbers <- function(units, name) vapply(units, function(u) as.numeric(u[[name]]), 0)
shares <- function(units) list(x = numbers(units, "count"), n = numbers(units, "seeds"))

# The groups of a lot without those whose sowings came before: the start of a storage series counts once.
distinct_groups <- function(units, result, lot) {
  seen <- character()
  kept <- list()
  for (g in Filter(function(g) g$lot == lot, result$groups)) {
    own <- group_of(units, lot, g$treatment, g$stored)
    sowings <- unlist(lapply(own, function(u) u$sowings))
    if (length(own) > 0 && !any(sowings %in% seen)) kept <- c(kept, list(own))
    seen <- c(seen, sowings)
  }
  kept
}

lot_dispersion <- function(units, result, lots) {
  groups <- unlist(lapply(lots, function(lot) distinct_groups(units, result, lot)), recursive = FALSE)
  dispersion_of(lapply(groups, shares))
}

check_group <- function(result, units, group) {
  own <- group_of(units, group$lot, group$treatment, group$stored)
  mine <- c(units = length(own))
  known <- length(own) > 0 && !any(is.na(numbers(own, "value")))
  if (result$measure %in% c("germination", "storage")) {
    g <- shares(own)
    if (length(own) > 0) mine <- c(mine, count = sum(g$x))
    if (known) {
      p <- sum(g$x) / sum(g$n)
      used <- lot_dispersion(units, result, group$lot)
      alone <- length(own) == 1
      limits <- wilson(p, if (alone) sum(g$n) else sum(g$n) / used[["used"]], if (alone) qnorm(0.975) else qt(0.975, used[["dfUsed"]]))
      mine <- c(mine, seeds = sum(g$n), estimate = 100 * p, lower = 100 * limits[1], upper = 100 * limits[2])
    }
  } else {
    values <- numbers(own, "value")
    if (known) mine <- c(mine, estimate = mean(values))
    if (known && length(own) > 1) mine <- c(mine, sd = sd(values))
    if (known && length(own) > 1 && sd(values) > 0) {
      mine <- c(mine, lower = t.test(values)$conf.int[1], upper = t.test(values)$conf.int[2])
    }
    if (is_time(result)) {
      bracket <- time_bracket(result$measure, group_checks(result, own))
      mine <- c(mine, after = bracket[1], by = bracket[2])
    }
  }
  published <- c(units = group$units, count = group$count, seeds = group$seeds, estimate = group$estimate, sd = group$sd,
    lower = at(group, "interval", "lower"), upper = at(group, "interval", "upper"),
    after = at(group, "bracket", "after"), by = at(group, "bracket", "by"))
  agree(paste(c(result$outcome, group$lot, group$treatment, if (!is.na(group$stored)) paste(group$stored, "years")), collapse = ", "), mine, published)
}

is_time <- function(result) result$measure %in% c("t50", "mgt", "spread")

group_checks <- function(result, units) {
  if (length(units) == 0) return(list(day = numeric(), total = numeric(), newly = numeric()))
  checks_of(unlist(lapply(units, function(u) u$sowings)), at(result, "days", units[[1]]$lot))
}

# Half was reached in (L1, U1] by the control and in (L2, U2] by the treatment: the lag lies in (L2 - U1, U2 - L1). So it is with two spreads.
timing_of <- function(result, pairs, weights = 1) {
  if (!is_time(result)) return(list(coarse = FALSE, bracket = c(bracketLower = NA, bracketUpper = NA)))
  each <- sapply(pairs, function(pair) {
    t <- group_checks(result, pair$t)
    c <- group_checks(result, pair$c)
    half <- c(time_bracket(result$measure, t), time_bracket(result$measure, c))
    c(half[1] - half[4], half[2] - half[3], is_coarse(result$measure, t) || is_coarse(result$measure, c))
  })
  bracket <- drop(each[1:2, , drop = FALSE] %*% (weights / sum(weights)))
  list(coarse = any(each[3, ] == 1), bracket = c(bracketLower = bracket[1], bracketUpper = bracket[2]))
}

# Three blocks or more, each with both treatments, every unit in one; NULL otherwise.
blocks_of <- function(pair) {
  all <- unlist(lapply(c(pair$t, pair$c), function(u) u$block))
  names <- sort(unique(all[!is.na(all)]), method = "radix")
  if (any(is.na(all)) || length(names) < 3) return(NULL)
  within <- function(units, block) Filter(function(u) u$block == block, units)
  blocks <- lapply(names, function(b) list(t = within(pair$t, b), c = within(pair$c, b)))
  if (all(sapply(blocks, function(b) length(b$t) > 0 && length(b$c) > 0))) blocks else NULL
}

added <- function(blocks, side) {
  list(x = sapply(blocks, function(b) sum(numbers(b[[side]], "count"))), n = sapply(blocks, function(b) sum(numbers(b[[side]], "seeds"))))
}
averaged <- function(blocks, side) sapply(blocks, function(b) mean(numbers(b[[side]], "value")))

recomputed <- function(result, units, comparison) {
  lots <- if (comparison$lot == "all") unlist(comparison$lots) else comparison$lot
  pairs <- lapply(lots, function(lot) {
    list(t = group_of(units, lot, comparison$treatment, comparison$stored),
      c = group_of(units, lot, comparison$control, comparison$stored))
  })
  germination <- result$measure == "germination"
  values <- lapply(pairs, function(p) list(t = numbers(p$t, "value"), c = numbers(p$c, "value")))
  if (comparison$lot != "all") {
    blocks <- blocks_of(pairs[[1]])
    if (!germination) {
      timing <- timing_of(result, pairs)
      broken <- any(is.na(unlist(values))) || is.null(blocks)
      if (broken) return(means_pair(values[[1]]$t, values[[1]]$c, timing$coarse, timing$bracket))
      return(means_blocks(averaged(blocks, "t"), averaged(blocks, "c"), timing$coarse, timing$bracket))
    }
    if (length(values[[1]]$t) == 0 || length(values[[1]]$c) == 0) return(c(estimate = NA))
    if (!is.null(blocks)) return(germination_blocks(added(blocks, "t"), added(blocks, "c")))
    return(germination_pair(shares(pairs[[1]]$t), shares(pairs[[1]]$c), lot_dispersion(units, result, lots)))
  }
  if (all(lengths(unlist(values, recursive = FALSE)) >= 2)) { # pooled over replicated lots
    if (germination) {
      return(germination_pooled(lapply(pairs, function(p) list(t = shares(p$t), c = shares(p$c))), lot_dispersion(units, result, lots)))
    }
    timing <- timing_of(result, pairs, weights_of(values))
    return(means_pooled(values, timing$coarse, timing$bracket))
  }
  if (germination) return(germination_blocks(added(pairs, "t"), added(pairs, "c"))) # one unit each: lots are the blocks
  timing <- timing_of(result, pairs, rep(1, length(pairs)))
  means_blocks(averaged(pairs, "t"), averaged(pairs, "c"), timing$coarse, timing$bracket)
}

published_figures <- function(c) {
  df <- if (is.list(c$test) && is.list(c$test$df)) unlist(c$test$df) else c(at(c, "test", "df"), NA)
  lots_df <- if (is.list(c$lotsDiffer)) unlist(c$lotsDiffer$df) else c(NA, NA)
  c(estimate = c$estimate, lower = at(c, "interval", "lower"), upper = at(c, "interval", "upper"),
    lower90 = at(c, "equivalence", "interval", "lower"), upper90 = at(c, "equivalence", "interval", "upper"),
    riskRatio = at(c, "effects", "riskRatio"), oddsRatio = at(c, "effects", "oddsRatio"), cohensH = at(c, "effects", "cohensH"),
    g = at(c, "effects", "hedgesG", "estimate"), gLower = at(c, "effects", "hedgesG", "lower"),
    gUpper = at(c, "effects", "hedgesG", "upper"), hodgesLehmann = at(c, "effects", "hodgesLehmann"),
    phi = at(c, "dispersion", "phi"), df = at(c, "dispersion", "df"), used = at(c, "dispersion", "used"), dfUsed = at(c, "dispersion", "dfUsed"),
    statistic = at(c, "test", "statistic"), df1 = df[1], df2 = df[2], p = at(c, "test", "p"),
    arrangements = at(c, "permutation", "arrangements"), permutationP = at(c, "permutation", "p"), tipping = at(c, "tipping", "rho"),
    detectable = c$detectable, bracketLower = at(c, "bracket", "lower"), bracketUpper = at(c, "bracket", "upper"),
    welchLower = at(c, "welch", "lower"), welchUpper = at(c, "welch", "upper"), lotsStatistic = at(c, "lotsDiffer", "statistic"),
    lotsDf1 = lots_df[1], lotsDf2 = lots_df[2], lotsP = at(c, "lotsDiffer", "p"))
}

check_comparison <- function(result, units, comparison) {
  name <- paste(c(result$outcome, comparison$lot, comparison$treatment, "against", comparison$control,
    if (!is.na(comparison$stored)) paste(comparison$stored, "years")), collapse = " ")
  listed <- function(treatment) length(group_of(units, comparison$lot, treatment, comparison$stored))
  here <- c(listed(comparison$treatment), listed(comparison$control))
  if (comparison$lot != "all" && comparison$units$kind != "block" && any(here != unlist(comparison$units[c("treatment", "control")]))) {
    leave_aside(paste0(name, " (its units are not those in which the groups are shown)"))
    return(NA)
  }
  mine <- recomputed(result, units, comparison)
  published <- published_figures(comparison)
  if (isFALSE(at(comparison, "permutation", "exact"))) { # 20 000 arrangements drawn with a generator of its own
    leave_aside(paste0(name, ": permutation p from arrangements drawn at random"))
    published[c("arrangements", "permutationP")] <- NA
  }
  if (!is.list(comparison$equivalence)) mine <- mine[!names(mine) %in% c("lower90", "upper90")] # no margin was set
  beyond <- names(mine)[is.nan(mine)]
  if (length(beyond) > 0) {
    leave_aside(paste0(name, ": ", paste(beyond, collapse = ", "), ", beyond the reach of R's noncentral t"))
    mine[beyond] <- NA
    published[beyond] <- NA
  }
  agree(name, mine, published)
  at(comparison, "test", "p")
}

# Holm (1979) over the comparisons within lots, and over those pooled over lots (4).
check_adjusted <- function(result) {
  tested <- Filter(function(c) is.list(c$test), result$comparisons)
  pooled <- vapply(tested, function(c) c$lot == "all", NA)
  for (family in list(tested[!pooled], tested[pooled])) {
    mine <- p.adjust(vapply(family, function(c) c$test$p, 0), "holm")
    for (i in seq_along(family)) {
      agree(paste(result$outcome, family[[i]]$lot, family[[i]]$treatment), c(pAdjusted = mine[i]), c(pAdjusted = family[[i]]$test$pAdjusted))
    }
  }
}

# One-way F over all treatments of a lot (6).
check_overall <- function(result, units) {
  for (published in result$overall) {
    groups <- lapply(distinct_groups(units, result, published$lot), numbers, name = "value")
    test <- anova(lm(unlist(groups) ~ factor(rep(seq_along(groups), lengths(groups)))))
    agree(paste(result$outcome, published$lot, "over all treatments"),
      c(statistic = test$`F value`[1], df1 = test$Df[1], df2 = test$Df[2], p = test$`Pr(>F)`[1]),
      c(statistic = published$statistic, df1 = published$df[[1]], df2 = published$df[[2]], p = published$p))
  }
}

# ---- Storage series: 9 -------------------------------------------------------------------------

fitted_probit <- function(formula, x, n, data) {
  data$y <- cbind(x, n - x)
  suppressWarnings(glm(formula, family = binomial("probit"), data = data, control = glm.control(epsilon = 1e-14, maxit = 100)))
}
pearson_of <- function(fit) sum(residuals(fit, "pearson")^2)
used_of <- function(x2, df) c(phi = x2 / df, df = df, used = max(1, (x2 + 2) / (df + 1)), dfUsed = max(2, df + 1))

# Times at which the line could be at half (Fieller 1940): (a + b x)^2 <= q^2 var(a + b x). NA without bound.
fieller <- function(b, v, q) {
  g <- q^2 * v[2, 2] / b[2]^2
  leading <- b[2]^2 - q^2 * v[2, 2]
  middle <- b[1] * b[2] - q^2 * v[1, 2]
  root <- middle^2 - leading * (b[1]^2 - q^2 * v[1, 1])
  if (g >= 1 || root < 0) return(c(NA, NA))
  (-middle + c(-1, 1) * sqrt(root)) / leading
}

line_of <- function(result, units, published) {
  own <- Filter(function(u) u$lot == published$lot && u$treatment == published$treatment, units)
  list(x = numbers(own, "count"), n = numbers(own, "seeds"), time = numbers(own, "stored"), sowings = lapply(own, function(u) u$sowings))
}

# Fitted from three times, two of them strictly between none and all, and three units.
has_line <- function(line) {
  share <- tapply(line$x, line$time, sum) / tapply(line$n, line$time, sum)
  length(share) >= 3 && length(line$x) >= 3 && sum(share > 0 & share < 1) >= 2
}

check_survival <- function(result, units) {
  for (published in result$storage) {
    line <- line_of(result, units, published)
    mine <- c(units = length(line$x))
    if (has_line(line)) {
      fit <- fitted_probit(y ~ time, line$x, line$n, data.frame(time = line$time))
      b <- unname(coef(fit))
      phi <- used_of(pearson_of(fit), length(line$x) - 2)
      v <- vcov(fit) * phi[["used"]]
      half <- -b[1] / b[2]
      limits <- fieller(b, v, qt(0.975, phi[["dfUsed"]]))
      within <- b[2] < 0 && half >= min(line$time) && half <= max(line$time) && !anyNA(limits)
      mine <- c(mine, ki = b[1], slope = b[2], sigma = if (b[2] < 0) -1 / b[2] else NA, phi,
        seKi = sqrt(v[1, 1]), seSlope = sqrt(v[2, 2]), if (within) c(half = half, lower = limits[1], upper = limits[2]))
    }
    agree(paste(result$outcome, published$lot, published$treatment, "survival line"), mine,
      c(units = published$units, ki = published$ki, slope = published$slope, sigma = published$sigma,
        phi = at(published, "dispersion", "phi"), df = at(published, "dispersion", "df"),
        used = at(published, "dispersion", "used"), dfUsed = at(published, "dispersion", "dfUsed"),
        seKi = at(published, "se", "ki"), seSlope = at(published, "se", "slope"), half = at(published, "halfLife", "estimate"),
        lower = at(published, "halfLife", "lower"), upper = at(published, "halfLife", "upper")))
  }
}

# One slope, one line for all, by the rise of the deviance over phi*; the start counts once in the degrees of freedom.
check_lines <- function(result, units) {
  for (published in result$lines) {
    if (is.na(published$statistic)) {
      leave_aside(sprintf("%s %s, %s: not every treatment had two jars at each test, or a line", result$outcome, published$lot, published$test))
      next
    }
    lines <- lapply(Filter(function(s) s$lot == published$lot, result$storage), function(s) line_of(result, units, s))
    all <- data.frame(time = unlist(lapply(lines, `[[`, "time")), kind = factor(rep(seq_along(lines), sapply(lines, function(l) length(l$x)))))
    x <- unlist(lapply(lines, `[[`, "x"))
    n <- unlist(lapply(lines, `[[`, "n"))
    full <- fitted_probit(y ~ kind * time, x, n, all)
    restricted <- fitted_probit(if (published$test == "common-slope") y ~ kind + time else y ~ time, x, n, all)
    distinct <- length(unique(unlist(lapply(lines, function(l) sapply(l$sowings, paste, collapse = " ")))))
    phi <- used_of(pearson_of(full), distinct - 2 * length(lines))
    saved <- (length(lines) - 1) * if (published$test == "common-slope") 1 else 2
    statistic <- max(0, deviance(restricted) - deviance(full)) / saved / phi[["used"]]
    agree(paste(result$outcome, published$lot, published$test),
      c(statistic = statistic, df1 = saved, df2 = phi[["dfUsed"]], p = pf(statistic, saved, phi[["dfUsed"]], lower.tail = FALSE), phi),
      c(statistic = published$statistic, df1 = published$df[[1]], df2 = published$df[[2]], p = published$p,
        phi = at(published, "dispersion", "phi"), df = at(published, "dispersion", "df"),
        used = at(published, "dispersion", "used"), dfUsed = at(published, "dispersion", "dfUsed")))
  }
}

# ---- All of it ---------------------------------------------------------------------------------

published <- read_json("analysis.json")
if (!identical(published$format, "fairsown-analysis/1")) stop("analysis.json is not of the format that this script knows")
counts <- read_table("counts-long.csv", c("seeds", "day", "germinated"))
measurements <- read_table("measurements-long.csv", c("day", "value"))

for (result in published$results) {
  units <- units_of(result)
  for (group in result$groups) check_group(result, units, group)
  for (comparison in result$comparisons) check_comparison(result, units, comparison)
  check_adjusted(result)
  check_overall(result, units)
  check_survival(result, units)
  check_lines(result, units)
}

if (length(left_aside) > 0) cat("Not recomputed here:", paste0("  ", left_aside), sep = "\n")
if (length(differences) > 0) {
  stop(sprintf("%d figures of %s differ from analysis.json:\n%s", length(differences), published$trial, paste(differences, collapse = "\n")))
}
cat(sprintf("%s: all %d figures agree with analysis.json.\n", published$trial, agreed))
