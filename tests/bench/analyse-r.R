# What tests/bench/analyse-r.ts lets R do of one trial, with the functions of tests/reference/r/analysis.R: each lot by
# itself in germination, time to half and height, and all lots together in germination, as the trials ask.

# The fewest units of each, from 2, with which a difference is shown: doubled, then halved.
fewest <- function(is_shown) {
  enough <- 2
  while (!is_shown(enough)) if ((enough <- 2 * enough) > 1000) return(NA)
  too_few <- enough %/% 2
  while (enough - too_few > 1) {
    middle <- (enough + too_few) %/% 2
    if (is_shown(middle)) enough <- middle else too_few <- middle
  }
  enough
}

settle_share <- function(points, l, used) {
  p0 <- (sum(l$c$x) + 0.5) / (sum(l$c$n) + 1)
  seeds <- mean(c(l$t$n, l$c$n))
  fewest(function(k) isTRUE(detectable_share(k * seeds, k * seeds, p0, used, 2 * k - 1) <= points))
}

settle_mean <- function(difference, l) {
  sd <- sqrt((sum((l$t - mean(l$t))^2) + sum((l$c - mean(l$c))^2)) / (length(l$t) + length(l$c) - 2))
  fewest(function(k) power.t.test(k, difference, sd, strict = TRUE)$power >= 0.8)
}

with_settle <- function(outcome, groups) {
  # The 14th figure of germination is the dispersion used.
  c(outcome, list(settle = mapply(function(l, v) settle_share(10, l, v[14]), groups, outcome$lots)))
}

# With what has to matter: 10 points, 1 day, 5 mm (tests/bench/generate-site.ts).
analyse_trial <- function(lots) {
  last <- function(units) list(x = sapply(units, function(u) u$total[length(u$total)]), n = sapply(units, function(u) u$seeds))
  half <- function(units) sapply(units, function(u) time_to(u$day, u$total, 0.5))
  height <- function(units) sapply(units, function(u) mean(u$height))
  pairs <- function(value) lapply(lots, function(lot) list(t = value(lot$t), c = value(lot$c)))
  of_means <- function(values, matters) {
    list(lots = lapply(values, function(l) means(l$t, l$c)), settle = sapply(values, function(l) settle_mean(matters, l)))
  }

  germinated <- pairs(last)
  list(
    germination = with_settle(list(lots = lapply(germinated, function(l) germination(l$t, l$c)), pooled = germination_pooled(germinated)), germinated),
    t50 = of_means(pairs(half), 1),
    height = of_means(pairs(height), 5),
    icc = lapply(lots, function(lot) icc(lapply(c(lot$t, lot$c), function(u) u$height)))
  )
}

# Difference, 95 % limits and units that would settle it by outcome and lot, all lots last where they are put together: what must agree with ours.
compared <- function(done) {
  of <- function(outcome, at) c(rbind(sapply(outcome$lots, function(v) v[at]), outcome$settle), outcome$pooled[1:3])
  c(of(done$germination, 7:9), of(done$t50, 1:3), of(done$height, 1:3))
}

# Seconds of processor a trial, and what must agree; once before for nothing, so that R has compiled its functions.
timed <- function(trials, times) {
  for (trial in trials) analyse_trial(trial)
  start <- proc.time()
  for (i in seq_len(times)) done <- lapply(trials, analyse_trial)
  spent <- proc.time() - start
  c((spent[["user.self"]] + spent[["sys.self"]]) / (times * length(trials)), unlist(lapply(done, compared)))
}
