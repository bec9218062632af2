# Proportions and their differences by stats::prop.test without continuity correction. Writes proportions.json.
source("json.R")

# Wilson limits from prop.test; its level stands for the quantile. Exact at the ends, where prop.test rounds.
limits <- function(x, n, quantile) {
  found <- suppressWarnings(prop.test(x, n, conf.level = 1 - 2 * pnorm(-quantile), correct = FALSE))$conf.int # small expected counts
  c(if (x == 0) 0 else found[1], if (x == n) 1 else found[2])
}
wilson <- rows(
  rbind(
    expand.grid(x = c(0, 1, 7, 25), n = c(25, 400), quantile = qnorm(c(0.95, 0.975))),
    data.frame( # effective sizes and t quantiles
      x = c(0, 12.2, 33.3, 1, 0.25), n = c(17.7, 12.2, 35.46, 1, 0.5), quantile = qt(0.975, c(2, 7, 5, 2, 9))
    )
  ),
  function(x, n, quantile) {
    found <- limits(x, n, quantile)
    list(lower = found[1], upper = found[2])
  }
)

pairs <- data.frame(
  x1 = c(56, 9, 6, 5, 0, 0, 10, 10, 1, 200, 7.5), n1 = c(70, 10, 7, 56, 10, 10, 10, 10, 1, 200, 12.4),
  x2 = c(48, 3, 2, 0, 0, 0, 0, 0, 0, 199, 9.1), n2 = c(80, 10, 7, 29, 20, 10, 20, 10, 1, 200, 10.9)
)
newcombe <- rows(rbind(cbind(pairs, quantile = qnorm(0.975)), cbind(pairs, quantile = qt(0.95, 3))), function(x1, n1, x2, n2, quantile) {
  one <- limits(x1, n1, quantile)
  two <- limits(x2, n2, quantile)
  p <- c(x1 / n1, x2 / n2)
  list(
    lower = p[1] - p[2] - sqrt((p[1] - one[1])^2 + (two[2] - p[2])^2),
    upper = p[1] - p[2] + sqrt((one[2] - p[1])^2 + (p[2] - two[1])^2)
  )
})

twoByTwo <- rows(pairs, function(x1, n1, x2, n2) {
  statistic <- suppressWarnings(prop.test(c(x1, x2), c(n1, n2), correct = FALSE))$statistic
  cells <- c(x1, n1 - x1, x2, n2 - x2)
  if (any(cells == 0)) cells <- cells + 0.5
  p <- c(x1 / n1, x2 / n2)
  none <- (x1 == 0 && x2 == 0) || (x1 == n1 && x2 == n2)
  list(
    statistic = if (is.nan(statistic)) 0 else unname(statistic),
    riskRatio = if (any(p == 0)) NA else p[1] / p[2],
    oddsRatio = if (none) NA else exp(sum(c(1, -1, -1, 1) * log(cells))),
    cohensH = 2 * asin(sqrt(p[1])) - 2 * asin(sqrt(p[2]))
  )
})

write_reference(file = "proportions.json", wilson = wilson, newcombe = newcombe, twoByTwo = twoByTwo)
