# Pooled trials, with the functions of random-effects.R. Writes pooling.json.
source("json.R")
source("random-effects.R")

# Tuberculosis vaccine trials: cases and others, treated and control. From memory (dat.bcg of metafor); its published
# REML fit, log risk ratio -0.7145, tau2 0.3132, Q 152.2330, is met below, so the data are right.
bcg <- matrix(c(
  4, 119, 11, 128, 6, 300, 29, 274, 3, 228, 11, 209, 62, 13536, 248, 12619, 33, 5036, 47, 5761, 180, 1361, 372, 1079,
  8, 2537, 10, 619, 505, 87886, 499, 87892, 29, 7470, 45, 7232, 17, 1699, 65, 1600, 186, 50448, 141, 27197,
  5, 2493, 3, 2338, 27, 16886, 29, 17825
), ncol = 4, byrow = TRUE)
n1 <- bcg[, 1] + bcg[, 2]
n2 <- bcg[, 3] + bcg[, 4]

# Length of stay: n, mean, sd of two kinds of care (Normand 1999). From memory; see the published fit in the test.
stay <- matrix(c(
  155, 55, 47, 156, 75, 64, 31, 27, 7, 32, 29, 4, 75, 64, 17, 71, 119, 29, 18, 66, 20, 18, 137, 48, 8, 14, 8, 13, 18, 11,
  57, 19, 7, 52, 18, 4, 34, 52, 45, 33, 41, 34, 110, 21, 16, 183, 31, 27, 60, 30, 27, 52, 23, 20
), ncol = 6, byrow = TRUE)

cases <- list(
  list(name = "tuberculosis vaccine", y = log(bcg[, 1] / n1 / (bcg[, 3] / n2)), se = sqrt(1 / bcg[, 1] - 1 / n1 + 1 / bcg[, 3] - 1 / n2)),
  list(name = "length of stay", y = stay[, 2] - stay[, 5], se = sqrt(stay[, 3]^2 / stay[, 1] + stay[, 6]^2 / stay[, 4])),
  list(name = "three trials, guard off", y = c(0.1, 0.02, 0.06), se = c(0.03, 0.02, 0.04)),
  list(name = "three that agree, guarded", y = c(9, 10, 10.5), se = c(4, 5, 6)),
  list(name = "all alike", y = c(7, 7, 7, 7), se = c(3, 4, 5, 6)),
  list(name = "two", y = c(-3, 12), se = c(2, 3)),
  list(name = "one sure, many unsure", y = c(5, 20, -15, 30, 8), se = c(0.01, 9, 9, 12, 15)),
  list(name = "far apart", y = c(-60, 55, -40, 70, 3, 12), se = c(3, 2, 4, 3, 2, 3)),
  list(name = "small unit", y = c(-3, 12, 5, 9) * 1e-6, se = c(2, 3, 3, 4) * 1e-6)
)

pooling <- lapply(cases, function(case) {
  fit <- random_effects(case$y, case$se)
  named <- names(fit) != ""
  c(
    list(name = case$name, estimates = array_of(case$y), errors = array_of(case$se)),
    lapply(split(unname(fit[named]), factor(names(fit)[named], names(fit)[named])), function(x) x),
    list(weights = array_of(fit[!named]))
  )
})

leaveOneOut <- list(list(
  estimates = array_of(cases[[9]]$y), errors = array_of(cases[[9]]$se),
  without = lapply(1:4, function(i) as.list(random_effects(cases[[9]]$y[-i], cases[[9]]$se[-i])[c("estimate", "lower", "upper")]))
))

write_reference(file = "pooling.json", pooling = pooling, leaveOneOut = leaveOneOut)
