# Random effects with REML and the Knapp-Hartung interval, written a second time from the restricted likelihood.
# Functions only; pooling.R writes the reference, tests call them on random data. Base R.

restricted <- function(tau2, y, v) {
  w <- 1 / (v + tau2)
  mu <- sum(w * y) / sum(w)
  0.5 * sum(log(w)) - 0.5 * log(sum(w)) - 0.5 * sum(w * (y - mu)^2)
}

# The highest point: the best of a grid, then optimise between its neighbours. Where it lies inside, the flat top is placed
# to the last digits by the derivative, worked out with the projection matrix P rather than from weights.
reml <- function(y, v) {
  top <- max(v, diff(range(y))^2)
  grid <- c(0, top * 10^seq(-9, 0, length.out = 400))
  at <- which.max(vapply(grid, restricted, 0, y = y, v = v))
  near <- grid[c(max(1, at - 1), min(length(grid), at + 1))]
  found <- optimise(restricted, near, y = y, v = v, maximum = TRUE, tol = 1e-12 * top)$maximum
  slope <- function(tau2) {
    W <- diag(1 / (v + tau2))
    X <- matrix(1, length(y))
    P <- W - W %*% X %*% solve(t(X) %*% W %*% X) %*% t(X) %*% W
    drop(t(y) %*% P %*% P %*% y) - sum(diag(P))
  }
  if (slope(0) <= 0 && restricted(0, y, v) >= restricted(found, y, v)) return(0)
  around <- pmax(0, found * c(1 - 1e-3, 1 + 1e-3))
  if (slope(around[1]) * slope(around[2]) >= 0) return(found)
  uniroot(slope, around, tol = 1e-14 * found)$root
}

random_effects <- function(y, se) {
  v <- se^2
  k <- length(y)
  tau2 <- reml(y, v)
  w <- 1 / (v + tau2)
  mu <- sum(w * y) / sum(w)
  ordinary <- sqrt(1 / sum(w))
  adjusted <- sqrt(sum(w * (y - mu)^2) / (k - 1) / sum(w))
  t_half <- qt(0.975, k - 1) * adjusted
  z_half <- qnorm(0.975) * ordinary
  guarded <- adjusted < ordinary * (1 - 1e-9) # equal but for rounding: not guarded
  half <- if (guarded) max(t_half, z_half) else t_half
  p_t <- 2 * pt(-abs(mu / adjusted), k - 1)
  p_z <- 2 * pnorm(-abs(mu / ordinary))
  p <- if (guarded) max(p_t, p_z) else p_t
  reach <- function(extra) qt(0.975, k - 1) * sqrt(tau2 + max(ordinary, adjusted)^2 + extra)
  f <- 1 / v
  Q <- sum(f * (y - sum(f * y) / sum(f))^2)
  typical <- (k - 1) * sum(f) / (sum(f)^2 - sum(f^2))
  c(
    estimate = mu, lower = mu - half, upper = mu + half, p = p, guarded = guarded,
    predictionLower = mu - reach(0), predictionUpper = mu + reach(0),
    nextLower = mu - reach(median(v)), nextUpper = mu + reach(median(v)),
    tau2 = tau2, i2 = 100 * tau2 / (tau2 + typical), q = Q, qP = pchisq(Q, k - 1, lower.tail = FALSE), 100 * w / sum(w)
  )
}
