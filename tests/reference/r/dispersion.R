# Over-dispersion, blocks and pooling of germination, each by a route of R's own. Writes dispersion.json.
source("json.R")

units <- function(count, seeds) Map(function(x, n) list(count = x, seeds = n), count, seeds)
case <- function(...) list(groups = unname(list(...)))

# Pearson residuals of a binomial model with one mean a group, over the groups strictly between 0 and 100 %.
pearson <- lapply(
  list(
    case(units(c(40, 42, 45), c(50, 50, 50)), units(c(30, 33, 20), c(50, 50, 48))),
    case(units(c(0, 0), c(50, 50)), units(c(49, 50), c(50, 50))),
    case(units(c(1, 0), c(50, 50)), units(c(50, 50, 50), c(50, 50, 50)), units(c(3, 9, 1, 25), c(10, 25, 7, 60))),
    case(units(25, 50), units(c(10, 10, 10), c(20, 20, 20)))
  ),
  function(case) {
    inside <- Filter(function(g) {
      x <- sum(sapply(g, `[[`, "count"))
      x > 0 && x < sum(sapply(g, `[[`, "seeds"))
    }, case$groups)
    rows <- do.call(rbind, Map(function(g, i) data.frame(x = sapply(g, `[[`, "count"), n = sapply(g, `[[`, "seeds"), g = i), inside, seq_along(inside)))
    rows$g <- factor(rows$g)
    fit <- if (nlevels(rows$g) > 1) {
      glm(cbind(x, n - x) ~ g, binomial, rows, control = list(epsilon = 1e-15))
    } else {
      glm(cbind(x, n - x) ~ 1, binomial, rows, control = list(epsilon = 1e-15))
    }
    c(case, list(statistic = sum(residuals(fit, "pearson")^2), df = df.residual(fit)))
  }
)

# Blocks: t statistic through t.test, φ_B from its standard error (methods.md 3).
block_case <- function(xt, nt, xc, nc) {
  d <- xt / nt - xc / nc
  b <- length(d)
  p <- c((sum(xt) + 0.5) / (sum(nt) + 1), (sum(xc) + 0.5) / (sum(nc) + 1))
  v <- mean(p[1] * (1 - p[1]) / nt + p[2] * (1 - p[2]) / nc)
  phi <- b * t.test(d)$stderr^2 / v
  used <- max(1, (2 + (b - 1) * phi) / b)
  statistic <- mean(d) / sqrt(used * v / b)
  list(
    blocks = unname(Map(function(x1, n1, x2, n2) list(treated = list(count = x1, seeds = n1), control = list(count = x2, seeds = n2)), xt, nt, xc, nc)),
    difference = mean(d), phi = phi, df = b - 1, used = used, dfUsed = b, statistic = statistic, p = 2 * pt(-abs(statistic), b),
    treated = list(share = mean(xt / nt), size = b^2 / sum(1 / nt) / used),
    control = list(share = mean(xc / nc), size = b^2 / sum(1 / nc) / used)
  )
}
blocks <- list(
  block_case(c(45, 40, 48, 39), c(50, 50, 50, 50), c(40, 33, 45, 35), c(50, 50, 50, 50)),
  block_case(c(45, 10, 88), c(50, 50, 100), c(40, 33, 45), c(48, 40, 50)),
  block_case(c(50, 50, 49), c(50, 50, 50), c(50, 49, 50), c(50, 50, 50)),
  block_case(rep(30, 3), rep(50, 3), c(12, 11, 12), c(50, 50, 50))
)

# Lots: D is a weighted mean, D' and the sum about it a weighted least-squares fit (methods.md 4).
pooled_case <- function(xt, nt, xc, nc, used, dfUsed) {
  d <- xt / nt - xc / nc
  w <- nt * nc / (nt + nc)
  luck <- function(x, n) (x + 0.5) / (n + 1) * (n - x + 0.5) / (n + 1) / n
  v <- luck(xt, nt) + luck(xc, nc)
  D <- weighted.mean(d, w)
  se <- sqrt(used * sum((w / sum(w))^2 * v))
  lots <- length(d)
  F <- deviance(lm(d ~ 1, weights = 1 / v)) / (lots - 1) / used
  list(
    lots = unname(Map(function(x1, n1, x2, n2) list(treated = list(count = x1, seeds = n1), control = list(count = x2, seeds = n2)), xt, nt, xc, nc)),
    used = used, dfUsed = dfUsed, difference = D, se = se, p = 2 * pt(-abs(D / se), dfUsed),
    lotsDiffer = list(statistic = F, df = array_of(c(lots - 1, dfUsed)), p = pf(F, lots - 1, dfUsed, lower.tail = FALSE))
  )
}
pooled <- list(
  pooled_case(c(180, 90), c(200, 100), c(150, 88), c(200, 100), 1.4, 9),
  pooled_case(c(11, 16, 14, 2, 6, 1, 1, 4), c(36, 20, 19, 16, 17, 11, 5, 6), c(10, 22, 7, 1, 0, 0, 1, 6), c(37, 32, 19, 17, 12, 10, 9, 7), 1, 30),
  pooled_case(c(100, 50, 0), c(100, 50, 75), c(100, 50, 0), c(100, 60, 75), 2, 2)
)

write_reference(file = "dispersion.json", pearson = pearson, blocks = blocks, pooled = pooled)
