# What a comparison could have shown, by root finding and power.t.test of R. Writes planning.json.
source("json.R")

# Detectable difference of proportions, methods.md 7: each direction by uniroot, the larger of them.
proportion <- rows(
  data.frame(
    share = c(0.9, 0.5, 0.02, 0.75, 0.97, 0.6, 0.5), control = c(200, 150, 100, 88.5, 400, 25, 4), treated = c(200, 100, 100, 90, 50, 25, 4),
    used = c(1.41, 1, 2, 4.3, 1, 2, 3), dfUsed = c(7, 5, 2, 9, 24, 4, 2), level = c(rep(0.05, 5), 0.1, 0.05), power = c(rep(0.8, 5), 0.9, 0.8)
  ),
  function(share, control, treated, used, dfUsed, level, power) {
    k <- qt(1 - level / 2, dfUsed) + qt(power, dfUsed)
    gap <- function(d, sign) {
      p <- share + sign * d
      d - k * sqrt(used * (share * (1 - share) / control + p * (1 - p) / treated))
    }
    root <- function(sign, room) {
      if (gap(room, sign) < 0) return(-Inf)
      uniroot(gap, c(0, room), sign, tol = 1e-15)$root
    }
    d <- max(root(1, 1 - share), root(-1, share))
    list(detectable = if (d == -Inf) NA else d)
  }
)

mean <- rows(data.frame(n = c(2, 3, 4, 20, 64), sd = c(1, 2.5, 0.1, 1, 1), level = c(0.05, 0.05, 0.1, 0.05, 0.05), power = c(0.8, 0.8, 0.9, 0.8, 0.8)), function(n, sd, level, power) {
  found <- power.t.test(n = n, sd = sd, sig.level = level, power = power, strict = TRUE, tol = 1e-14)
  list(detectable = found$delta)
})

units <- rows(data.frame(difference = c(0.5, 0.8, 1, 2, 5, 12), sd = c(1, 1, 1, 1, 1, 3)), function(difference, sd) {
  found <- tryCatch(power.t.test(delta = difference, sd = sd, power = 0.8, strict = TRUE, tol = 1e-12)$n, error = function(e) 2)
  list(units = ceiling(found))
})

# Correlation at which the interval of two single units first takes in zero.
tipping <- rows(
  data.frame(x1 = c(48, 30, 50, 95, 40, 0), n1 = c(50, 50, 50, 100, 50, 60), x2 = c(30, 45, 0, 60, 38, 45), n2 = c(50, 50, 50, 80, 50, 60)),
  function(x1, n1, x2, n2) {
    z <- qnorm(0.975)
    wilson <- function(p, n) (p + z^2 / (2 * n) + c(-1, 1) * z * sqrt(p * (1 - p) / n + z^2 / (4 * n^2))) / (1 + z^2 / n)
    edge <- function(rho) {
      p <- c(x1 / n1, x2 / n2)
      one <- wilson(p[1], n1 / (1 + (n1 - 1) * rho))
      two <- wilson(p[2], n2 / (1 + (n2 - 1) * rho))
      d <- p[1] - p[2]
      if (d >= 0) d - sqrt((p[1] - one[1])^2 + (two[2] - p[2])^2) else -(d + sqrt((one[2] - p[1])^2 + (p[2] - two[1])^2))
    }
    if (edge(0) <= 0) return(list(rho = NA, note = "already"))
    if (edge(1) > 0) return(list(rho = NA, note = "never"))
    list(rho = uniroot(edge, c(0, 1), tol = 1e-15)$root, note = NA)
  }
)

write_reference(file = "planning.json", proportion = proportion, mean = mean, units = units, tipping = tipping)
