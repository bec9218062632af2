# Distribution functions of base R. Writes distributions.json.
source("json.R")

normal <- rows(data.frame(x = c(-37, -20, -8.3, -1, -1e-8, 0, 1e-8, 0.5, 1.96, 6, 20, 37)), function(x) {
  list(lower = pnorm(x), upper = pnorm(x, lower.tail = FALSE))
})
normalQuantile <- rows(
  data.frame(p = c(1e-300, 1e-30, 1e-17, 1e-10, 1e-8, 0.001, 0.025, 0.3, 0.5, 0.8, 0.975, 0.999999)),
  function(p) list(x = qnorm(p))
)
t <- rows(
  expand.grid(x = c(-40, -2, -0.999, -1e-6, 0, 1e-6, 0.5, 1, 1.001, 3, 12.7, 1e3, 1e8), df = c(0.5, 1, 1.7, 2, 3, 22.1641, 100, 1e4)),
  function(x, df) list(lower = pt(x, df), upper = pt(x, df, lower.tail = FALSE), twoSided = 2 * pt(-abs(x), df))
)
tQuantile <- rows(
  expand.grid(p = c(1e-10, 0.005, 0.025, 0.2, 0.8, 0.95, 0.975, 0.995), df = c(0.5, 1, 1.7, 2, 3, 22.1641, 100, 1e4)),
  function(p, df) list(x = qt(p, df))
)
f <- rows(
  expand.grid(x = c(0, 1e-6, 0.3, 1, 1.0001, 4, 50, 1e5, 1e12), df1 = c(1, 2, 7.5, 375), df2 = c(1, 2.5, 24, 1000)),
  function(x, df1, df2) list(upper = pf(x, df1, df2, lower.tail = FALSE))
)
# Below p = 0.025 qf has fewer than nine digits: qf(0.001, 1, 1000) is off by 8e-8 from qt(0.5005, 1000)^2.
fQuantile <- rows(
  expand.grid(p = c(0.025, 0.2, 0.5, 0.9, 0.975, 0.999), df1 = c(1, 2, 7.5, 375), df2 = c(1, 2.5, 24, 1000)),
  function(p, df1, df2) list(x = qf(p, df1, df2))
)
chiSquare <- rows(
  expand.grid(x = c(0, 1e-6, 0.3, 1, 5, 30, 150, 700), df = c(0.5, 1, 2, 7, 40, 375)),
  function(x, df) list(lower = pchisq(x, df), upper = pchisq(x, df, lower.tail = FALSE))
)
noncentralT <- rows(
  expand.grid(t = c(-3, 0, 0.5, 2, 5, 20), df = c(1, 2, 4.5, 14, 98), ncp = c(-2, 0, 0.5, 3, 8, 20)),
  function(t, df, ncp) list(lower = suppressWarnings(pt(t, df, ncp))) # "full precision may not have been achieved"
)
# Small tails and large ncp, where pt(ncp =) has no digits left: the definition, integrated by R over the logarithm of chi-square/df.
pieces <- function(f, from, to) {
  sum(sapply(seq(from, to - 1), function(at) integrate(f, at, at + 1, rel.tol = 1e-11, abs.tol = 0, stop.on.error = FALSE)$value))
}
noncentralTail <- rows(
  rbind(
    expand.grid(t = c(-3, 0, 2), df = c(2, 4.5, 14), ncp = c(8, 12)),
    expand.grid(t = c(25, 45, 200), df = c(2, 4.5, 40), ncp = c(39, 41, 100)) # beyond the reach of pt
  ),
  function(t, df, ncp) {
    list(lower = pieces(function(u) pnorm(t * exp(u / 2) - ncp) * dchisq(df * exp(u), df) * df * exp(u), -40, 4))
  }
)
noncentralLocation <- rows(
  expand.grid(t = c(-4, 0, 0.7, 2.437, 9), df = c(2, 4, 14, 28), p = c(0.025, 0.05, 0.5, 0.975)),
  function(t, df, p) {
    list(ncp = suppressWarnings(uniroot(function(ncp) pt(t, df, ncp) - p, c(-25, 30), tol = 1e-13))$root)
  }
)
# ptukey is good to nine digits for up to four values; beyond, the definition is integrated by R.
range <- rows(expand.grid(q = c(0, 0.1, 1, 3.17, 3.984, 5, 9), k = c(2, 3, 4)), function(q, k) {
  list(lower = ptukey(q, k, Inf))
})
rangeOfMany <- rows(expand.grid(q = c(0.1, 1, 3.17, 3.984, 5), k = c(8, 16)), function(q, k) {
  list(lower = pieces(function(x) k * dnorm(x) * (pnorm(x) - pnorm(x - q))^(k - 1), -8, 9))
})
rangeQuantile <- rows(data.frame(k = c(2:8, 10, 12, 16)), function(k) list(q = qtukey(0.975, k, Inf)))

write_reference(file = "distributions.json",
  normal = normal, normalQuantile = normalQuantile, t = t, tQuantile = tQuantile, f = f, fQuantile = fQuantile,
  chiSquare = chiSquare, noncentralT = noncentralT, noncentralTail = noncentralTail,
  noncentralLocation = noncentralLocation, range = range, rangeOfMany = rangeOfMany, rangeQuantile = rangeQuantile
)
