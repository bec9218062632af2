# Means of units by t.test, lm and anova of R. Writes means.json.
source("json.R")

pairs <- list(
  list(a = c(4.1, 4.3), b = c(5.2, 5.9)), # n = 2
  list(a = c(0, 0, 1), b = c(2, 2, 2, 2)), # one group without spread
  list(a = c(1e7 + 1:4), b = c(1e7 + c(2.5, 3, 9, 4, 4))), # large values
  list(a = c(1e-9, 3e-9, 2e-9), b = c(4e-9, 4.5e-9, 4.2e-9)), # small values
  list(a = c(10.01, 10.02, 9.99, 10), b = c(20, 20.02, 19.99, 20.01)), # tiny p
  list(a = c(3, 3, 5, 7), b = c(3, 5, 5, 7, 7)) # ties
)
means <- lapply(pairs, function(pair) {
  a <- pair$a
  b <- pair$b
  test <- t.test(a, b)
  df <- length(a) + length(b) - 2
  d <- (mean(a) - mean(b)) / sqrt(((length(a) - 1) * var(a) + (length(b) - 1) * var(b)) / df)
  unit <- sqrt(1 / length(a) + 1 / length(b))
  # Beyond ncp 37 pt gives up; such a case has no limits here.
  limit <- function(p) {
    if (abs(d / unit) > 30) return(NA)
    suppressWarnings(uniroot(function(ncp) pt(d / unit, df, ncp) - p, d / unit + c(-7, 7), extendInt = "yes", tol = 1e-13))$root * unit
  }
  list(
    a = array_of(a), b = array_of(b),
    welch = list(
      difference = mean(a) - mean(b), se = test$stderr, df = unname(test$parameter), statistic = unname(test$statistic), p = test$p.value
    ),
    hedges = list(estimate = (1 - 3 / (4 * df - 1)) * d, lower = limit(0.975), upper = limit(0.025)),
    hodgesLehmann = median(outer(a, b, "-"))
  )
})

paired <- lapply(list(c(1, 3), c(0, 0, 0, 1e-3), c(-4, -4.1, -3.9, -4, -4.05), c(1e6 + 0.1, 1e6 + 0.3)), function(d) {
  test <- t.test(d)
  list(
    differences = array_of(d), difference = mean(d), se = test$stderr, df = unname(test$parameter),
    statistic = unname(test$statistic), p = test$p.value
  )
})

grouped <- list(
  list(c(1, 2), c(2, 4), c(3, 9)),
  list(c(5, 5, 5.5), c(7), c(6, 6.2, 8, 8.1)),
  list(c(1e7 + 0.1, 1e7 + 0.2, 1e7 + 0.3), c(1e7 + 0.2, 1e7 + 0.4)),
  list(c(1, 1.001, 0.999), c(50, 50.001, 50.002), c(100, 99.999, 100.001)) # tiny p
)
oneWay <- lapply(grouped, function(groups) {
  y <- unlist(groups) - groups[[1]][1]
  g <- factor(rep(seq_along(groups), lengths(groups)))
  table <- anova(lm(y ~ g))
  ms <- table$`Mean Sq`
  n <- lengths(groups)
  size <- (sum(n) - sum(n^2) / sum(n)) / (length(n) - 1)
  list(
    groups = lapply(groups, array_of), statistic = table$`F value`[1], df = array_of(table$Df), p = table$`Pr(>F)`[1],
    icc = (ms[1] - ms[2]) / (ms[1] + (size - 1) * ms[2])
  )
})

# Pooled over lots: treatment effect of lot + treatment, variance within lot x treatment.
lots <- list(
  list(list(treated = c(5, 6, 7), control = c(4, 4.5, 5.2)), list(treated = c(9, 9.5), control = c(7, 8.8, 8.1))),
  list(list(treated = c(1, 2), control = c(1, 1)), list(treated = c(3, 3), control = c(5, 6)), list(treated = c(0, 0, 0, 1), control = c(0, 0)))
)
pooled <- lapply(lots, function(case) {
  y <- unlist(lapply(case, function(lot) c(lot$treated, lot$control)))
  lot <- factor(rep(seq_along(case), sapply(case, function(l) length(unlist(l)))))
  treated <- unlist(lapply(case, function(l) rep(c(1, 0), lengths(l))))
  full <- lm(y ~ lot * treated)
  table <- anova(lm(y ~ lot + treated), full)
  D <- unname(coef(lm(y ~ lot + treated))["treated"])
  w <- sapply(case, function(l) prod(lengths(l)) / sum(lengths(l)))
  df <- df.residual(full)
  se <- summary(full)$sigma / sqrt(sum(w))
  list(
    lots = lapply(case, function(l) lapply(l, array_of)), difference = D, se = se, df = df, p = 2 * pt(-abs(D / se), df),
    lotsDiffer = list(statistic = table$F[2], df = array_of(c(table$Df[2], df)), p = table$`Pr(>F)`[2])
  )
})

holm <- lapply(list(c(0.01, 0.04, 0.03, 0.005), c(0.5, 0.5, 0.9), c(0.02, 0.02, 0.02), 0.3, c(1e-30, 1, 0)), function(p) {
  list(p = array_of(p), adjusted = array_of(p.adjust(p, "holm")))
})

write_reference(file = "means.json", means = means, paired = paired, oneWay = oneWay, pooled = pooled, holm = holm)
