# The figures of a comparison straight from the formulas of the methods, in base R only, written apart
# from the TypeScript. NA stands for null. tests/analysis/*-against-r.test.ts runs it on random trials.

wilson <- function(p, n, q) {
  centre <- (p + q^2 / (2 * n)) / (1 + q^2 / n)
  spread <- q * sqrt(p * (1 - p) / n + q^2 / (4 * n^2)) / (1 + q^2 / n)
  c(if (p == 0) 0 else centre - spread, if (p == 1) 1 else centre + spread)
}

newcombe <- function(pt, nt, pc, nc, q) {
  t <- wilson(pt, nt, q)
  c <- wilson(pc, nc, q)
  d <- pt - pc
  c(d - sqrt((pt - t[1])^2 + (c[2] - pc)^2), d + sqrt((t[2] - pt)^2 + (pc - c[1])^2))
}

pearson <- function(groups) {
  statistic <- 0
  df <- 0
  for (g in groups) {
    p <- sum(g$x) / sum(g$n)
    if (p <= 0 || p >= 1) next
    statistic <- statistic + sum((g$x - g$n * p)^2 / (g$n * p * (1 - p)))
    df <- df + length(g$x) - 1
  }
  c(statistic, df)
}

two_sided_permutation <- function(weights, values, k, statistic) {
  n <- length(values)
  observed <- abs(statistic(seq_len(k)))
  all <- abs(apply(combn(n, k), 2, statistic))
  p_of <- function(a) mean(all >= a - 1e-9 * max(all, 1e-300))
  if (p_of(max(all)) > 0.05) return(c(NA, NA))
  c(length(all), p_of(observed))
}

detectable_share <- function(pt_size, pc_size, p0, phi, nu) {
  multiple <- qt(0.975, nu) + qt(0.8, nu)
  direction <- function(sign) {
    room <- if (sign > 0) 1 - p0 else p0
    gap <- function(d) {
      p1 <- p0 + sign * d
      d - multiple * sqrt(phi * (p0 * (1 - p0) / pc_size + p1 * (1 - p1) / pt_size))
    }
    if (gap(room) < 0) return(NA)
    uniroot(gap, c(1e-12, room), tol = 1e-14)$root
  }
  found <- c(direction(1), direction(-1))
  if (all(is.na(found))) NA else 100 * max(found, na.rm = TRUE)
}

effects <- function(xt, nt, xc, nc) {
  cells <- c(xt, nt - xt, xc, nc - xc)
  pt <- xt / nt
  pc <- xc / nc
  rr <- if (xt == 0 || xc == 0) NA else pt / pc
  or <- if ((xt == 0 && xc == 0) || (xt == nt && xc == nc)) NA else {
    if (any(cells == 0)) cells <- cells + 0.5
    cells[1] * cells[4] / (cells[2] * cells[3])
  }
  c(rr, or, 2 * asin(sqrt(pt)) - 2 * asin(sqrt(pc)))
}

# Methods 2: two groups of k >= 2 units each; `others` are the further groups of the lot.
germination <- function(t, c, others = list()) {
  x2 <- pearson(c(list(t, c), others))
  phi <- if (x2[2] == 0) NA else x2[1] / x2[2]
  used <- if (x2[2] == 0) 2 else max(1, (x2[1] + 2) / (x2[2] + 1))
  nu <- if (x2[2] == 0) 2 else max(2, x2[2] + 1)
  xt <- sum(t$x); nt <- sum(t$n); xc <- sum(c$x); nc <- sum(c$n)
  pt <- xt / nt; pc <- xc / nc
  q95 <- qt(0.975, nu); q90 <- qt(0.95, nu)
  table <- matrix(c(xt, nt - xt, xc, nc - xc), 2)
  score <- if (any(rowSums(table) == 0)) 0 else suppressWarnings(chisq.test(table, correct = FALSE)$statistic)
  f <- unname(score) / used
  x <- c(t$x, c$x); n <- c(t$n, c$n)
  permutation <- two_sided_permutation(n, x, length(t$x), function(i) sum(x[i]) / sum(n[i]) - sum(x[-i]) / sum(n[-i]))
  p0 <- (xc + 0.5) / (nc + 1)
  c(
    100 * pt, 100 * wilson(pt, nt / used, q95), 100 * pc, 100 * wilson(pc, nc / used, q95),
    100 * (pt - pc), 100 * newcombe(pt, nt / used, pc, nc / used, q95), 100 * newcombe(pt, nt / used, pc, nc / used, q90),
    phi, x2[2], used, nu, f, pf(f, 1, nu, lower.tail = FALSE),
    effects(xt, nt, xc, nc), permutation, detectable_share(nt, nc, p0, used, nu)
  )
}

# Methods 3: x and n of each treatment by block.
germination_blocks <- function(t, c) {
  b <- length(t$x)
  pt <- mean(t$x / t$n); pc <- mean(c$x / c$n)
  shrunk <- function(g) (sum(g$x) + 0.5) / (sum(g$n) + 1)
  var_of <- function(g) shrunk(g) * (1 - shrunk(g)) / g$n
  v <- mean(var_of(t) + var_of(c))
  d <- t$x / t$n - c$x / c$n
  phi <- var(d) / v
  used <- max(1, (2 + (b - 1) * phi) / b)
  nt <- b^2 / sum(1 / t$n); nc <- b^2 / sum(1 / c$n)
  f <- (mean(d) / sqrt(used * v / b))^2
  c(
    100 * (pt - pc),
    100 * newcombe(pt, nt / used, pc, nc / used, qt(0.975, b)), 100 * newcombe(pt, nt / used, pc, nc / used, qt(0.95, b)),
    phi, b - 1, used, b, f, pf(f, 1, b, lower.tail = FALSE),
    sign_flip(d), detectable_share(nt, nc, shrunk(c), used, b)
  )
}

sign_flip <- function(d) {
  b <- length(d)
  if (b < 6) return(c(NA, NA))
  signs <- as.matrix(expand.grid(rep(list(c(-1, 1)), b)))
  all <- abs(signs %*% d) / b
  p_of <- function(a) mean(all >= a - 1e-9 * max(all, 1e-300))
  if (p_of(max(all)) > 0.05) return(c(NA, NA))
  c(length(all), p_of(abs(mean(d))))
}

# Methods 4: several lots, each with groups t and c of two units or more.
germination_pooled <- function(lots) {
  x2 <- pearson(unlist(lapply(lots, function(l) list(l$t, l$c)), recursive = FALSE))
  used <- if (x2[2] == 0) 2 else max(1, (x2[1] + 2) / (x2[2] + 1))
  nu <- if (x2[2] == 0) 2 else max(2, x2[2] + 1)
  per_lot <- sapply(lots, function(l) {
    shrunk <- function(g) (sum(g$x) + 0.5) / (sum(g$n) + 1)
    nt <- sum(l$t$n); nc <- sum(l$c$n)
    c(sum(l$t$x) / nt - sum(l$c$x) / nc, nt * nc / (nt + nc),
      shrunk(l$t) * (1 - shrunk(l$t)) / nt + shrunk(l$c) * (1 - shrunk(l$c)) / nc)
  })
  d <- per_lot[1, ]; w <- per_lot[2, ]; v <- per_lot[3, ]
  estimate <- sum(w * d) / sum(w)
  se <- sqrt(used * sum(w^2 * v)) / sum(w)
  cut <- function(x) pmax(-1, pmin(1, x))
  p <- 2 * pt(-abs(estimate / se), nu)
  between <- sum((d - sum(d / v) / sum(1 / v))^2 / v) / ((length(d) - 1) * used)
  c(100 * estimate, 100 * cut(estimate + c(-1, 1) * qt(0.975, nu) * se), 100 * cut(estimate + c(-1, 1) * qt(0.95, nu) * se),
    used, nu, p, between, pf(between, length(d) - 1, nu, lower.tail = FALSE))
}

means_pooled <- function(lots) {
  groups <- unlist(lapply(lots, function(l) list(l$t, l$c)), recursive = FALSE)
  df <- sum(sapply(groups, length) - 1)
  s2 <- sum(sapply(groups, function(g) sum((g - mean(g))^2))) / df
  d <- sapply(lots, function(l) mean(l$t) - mean(l$c))
  w <- sapply(lots, function(l) length(l$t) * length(l$c) / (length(l$t) + length(l$c)))
  estimate <- sum(w * d) / sum(w)
  se <- sqrt(s2 / sum(w))
  between <- sum(w * (d - estimate)^2) / ((length(d) - 1) * s2)
  c(estimate, estimate + c(-1, 1) * qt(0.975, df) * se, estimate + c(-1, 1) * qt(0.95, df) * se,
    estimate / se, df, 2 * pt(-abs(estimate / se), df), between, pf(between, length(d) - 1, df, lower.tail = FALSE))
}

# Methods 6: means of units.
means <- function(t, c) {
  test <- t.test(t, c)
  ninety <- t.test(t, c, conf.level = 0.9)$conf.int
  nt <- length(t); nc <- length(c); df <- nt + nc - 2
  pooled <- sqrt(((nt - 1) * var(t) + (nc - 1) * var(c)) / df)
  scale <- sqrt(1 / nt + 1 / nc)
  d <- (mean(t) - mean(c)) / pooled
  statistic <- d / scale
  limit <- function(p) uniroot(function(ncp) suppressWarnings(pt(statistic, df, ncp)) - p, statistic + c(-37, 37), tol = 1e-13)$root * scale
  g <- c(d * (1 - 3 / (4 * df - 1)), tryCatch(limit(0.975), error = function(e) NA), tryCatch(limit(0.025), error = function(e) NA))
  values <- c(t, c)
  permutation <- two_sided_permutation(NULL, values, nt, function(i) mean(values[i]) - mean(values[-i]))
  multiple <- uniroot(function(ncp) {
    critical <- qt(0.975, test$parameter)
    suppressWarnings(pt(critical, test$parameter, ncp, lower.tail = FALSE) + pt(-critical, test$parameter, ncp)) - 0.8
  }, c(0, 37), tol = 1e-12)$root
  c(mean(t) - mean(c), test$conf.int, ninety, unname(test$statistic), unname(test$parameter), test$p.value,
    g, median(outer(t, c, "-")), permutation, multiple * pooled * scale, one_group(t), one_group(c))
}

one_group <- function(x) c(mean(x), sd(x), t.test(x)$conf.int)

overall <- function(groups) {
  test <- anova(lm(unlist(groups) ~ factor(rep(seq_along(groups), lengths(groups)))))
  c(test$`F value`[1], test$Df, test$`Pr(>F)`[1])
}

icc <- function(units) {
  test <- anova(lm(unlist(units) ~ factor(rep(seq_along(units), lengths(units)))))
  n <- lengths(units)
  n0 <- (sum(n) - sum(n^2) / sum(n)) / (length(n) - 1)
  square <- test$`Mean Sq`
  c((square[1] - square[2]) / (square[1] + (n0 - 1) * square[2]), sqrt(square[2]))
}

means_blocks <- function(t, c) {
  test <- t.test(t, c, paired = TRUE)
  ninety <- t.test(t, c, paired = TRUE, conf.level = 0.9)$conf.int
  c(mean(t - c), test$conf.int, ninety, unname(test$statistic), unname(test$parameter), test$p.value, sign_flip(t - c))
}

# Methods 5, from checks (day, total) of one unit.
time_to <- function(day, total, share) {
  goal <- share * max(total)
  if (total[1] >= goal) return(NA)
  j <- which(total >= goal)[1]
  day[j - 1] + (goal - total[j - 1]) / (total[j] - total[j - 1]) * (day[j] - day[j - 1])
}
mean_time <- function(day, total) sum(diff(c(0, total)) * day) / max(total)
maguire <- function(day, total, sown) sum(diff(c(0, total)) / day) / sown * 100

# Methods 2, k = 1 in either group: seeds only, with the correlation at which the interval takes in zero.
germination_single <- function(t, c, margin) {
  xt <- sum(t$x); nt <- sum(t$n); xc <- sum(c$x); nc <- sum(c$n)
  z <- qnorm(0.975)
  at <- function(rho) newcombe(xt / nt, nt / (1 + (nt - 1) * rho), xc / nc, nc / (1 + (nc - 1) * rho), z)
  clear <- function(rho) if (xt / nt >= xc / nc) at(rho)[1] else -at(rho)[2]
  rho <- if (clear(0) <= 0 || clear(1) > 0) NA else uniroot(clear, c(0, 1), tol = 1e-14)$root
  seeds <- (nt + nc) / (length(t$x) + length(c$x))
  c(100 * (xt / nt - xc / nc), 100 * at(0), 100 * newcombe(xt / nt, nt, xc / nc, nc, qnorm(0.95)),
    effects(xt, nt, xc, nc), rho, units_needed(margin, (xc + 0.5) / (nc + 1), seeds, 2))
}

# The fewest units a treatment with which a difference (points) would be shown, by trying them one after another.
units_needed <- function(points, p0, seeds, phi, nu = function(k) 2 * k - 1) {
  for (k in 2:1000) {
    found <- detectable_share(k * seeds, k * seeds, p0, phi, nu(k))
    if (!is.na(found) && found <= points) return(k)
  }
  NA
}

units_needed_mean <- function(difference, t, c) {
  sd <- sqrt(((length(t) - 1) * var(t) + (length(c) - 1) * var(c)) / (length(t) + length(c) - 2))
  for (k in 2:1000) if (power.t.test(k, difference, sd, strict = TRUE)$power >= 0.8) return(k)
  NA
}
