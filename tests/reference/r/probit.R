# Probit lines by glm, Fieller limits by their quadratic, nested lines by deviances. Writes probit.json.
source("json.R")

exact <- glm.control(epsilon = 1e-14, maxit = 200)

fitted_line <- function(x, count, seeds) {
  glm(cbind(count, seeds - count) ~ x, family = binomial("probit"), control = exact)
}

# All x at which (a + b x)^2 <= q^2 var(a + b x).
fieller <- function(fit, q, level = 0) {
  b <- coef(fit) - c(level, 0)
  v <- vcov(fit)
  roots <- Re(polyroot(c(b[1]^2 - q^2 * v[1, 1], 2 * (b[1] * b[2] - q^2 * v[1, 2]), b[2]^2 - q^2 * v[2, 2])))
  list(estimate = -b[[1]] / b[[2]], lower = min(roots), upper = max(roots), g = q^2 * v[2, 2] / b[[2]]^2)
}

told <- function(name, x, count, seeds, q = qnorm(0.975)) {
  fit <- fitted_line(x, count, seeds)
  v <- vcov(fit)
  c(list(name = name, x = array_of(x), count = array_of(count), seeds = array_of(seeds), quantile = q,
    intercept = coef(fit)[[1]], slope = coef(fit)[[2]], va = v[1, 1], vab = v[1, 2], vb = v[2, 2],
    deviance = deviance(fit), pearson = sum(residuals(fit, "pearson")^2)), fieller(fit, q))
}

lines <- list(
  told("rotenone, Finney (1971) after Martin (1942)", log10(c(10.2, 7.7, 5.1, 3.8, 2.6)), c(44, 42, 24, 16, 6), c(50, 49, 46, 48, 50)),
  told("beetles, Bliss (1935)", c(1.6907, 1.7242, 1.7552, 1.7842, 1.8113, 1.8369, 1.861, 1.8839),
    c(6, 13, 18, 28, 52, 53, 61, 60), c(59, 60, 62, 56, 63, 59, 62, 60)),
  told("constructed survival series", c(0, 20, 40, 60, 80, 100), c(194, 187, 168, 131, 82, 39), rep(200, 6)),
  told("with none and all", c(0, 1, 2, 3, 5, 8), c(50, 50, 44, 30, 3, 0), rep(50, 6), 2.5),
  told("units of unlike size", c(0, 0, 1, 1, 3, 3), c(19, 95, 17, 88, 9, 40), c(20, 100, 20, 100, 20, 100), qt(0.975, 5)),
  told("hardly a fall", c(0, 1, 2, 3), c(95, 96, 94, 90), rep(100, 4))
)

# Two lines with a slope each, with one slope, and one line for both: deviances of the three.
nested <- rows(data.frame(gap = c(0, 1, 8, 30)), function(gap) {
  time <- rep(0:4, 2)
  kind <- rep(c("a", "b"), each = 5)
  count <- c(96, 90, 82, 60, 41, pmax(0, 96 - (0:4) * gap))
  seeds <- rep(100, 10)
  fit <- function(formula) deviance(glm(formula, family = binomial("probit"), control = exact))
  y <- cbind(count, seeds - count)
  list(time = array_of(time), count = array_of(count), full = fit(y ~ kind * time), slope = fit(y ~ kind + time), line = fit(y ~ time))
})

write_reference(file = "probit.json", lines = lines, nested = nested)
