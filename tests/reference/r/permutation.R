# Exact permutation tests over all arrangements with combn and expand.grid. Writes permutation.json.
source("json.R")

p_of <- function(observed, all) {
  equal <- 1e-9 * max(abs(all))
  reached <- function(limit) mean(abs(all) >= limit - equal)
  if (reached(max(abs(all))) > 0.05) NA else reached(abs(observed))
}

meansCases <- list(
  list(a = c(1, 2, 3, 4), b = c(5, 6, 7, 8)), # the most extreme arrangement
  list(a = c(3, 3, 5, 7), b = c(3, 5, 5, 7, 7)), # ties
  list(a = c(0.1, 0.2, 0.3), b = c(0.4, 0.5, 0.6)), # no p below 0.05 can be had
  list(a = c(2, 2, 2, 2), b = c(2, 2, 2, 2)), # all alike
  list(a = c(0.1, 0.2, 0.3, 0.4), b = c(0.3, 0.1, 0.4, 0.2)), # no difference but for rounding
  list(a = c(1.5, 9), b = c(2, 3, 4, 5, 6, 7, 8, 10)) # unequal groups
)
means <- lapply(meansCases, function(case) {
  y <- c(case$a, case$b)
  k <- length(case$a)
  difference <- function(i) mean(y[i]) - mean(y[-i])
  all <- combn(length(y), k, difference)
  list(a = array_of(case$a), b = array_of(case$b), arrangements = length(all), p = p_of(difference(seq_len(k)), all))
})

proportionCases <- list(
  list(x = c(48, 47, 49, 50, 40, 41, 42, 39), n = rep(50, 8), k = 4),
  list(x = c(10, 20, 9, 44, 5, 6, 7, 30, 2), n = c(10, 25, 10, 50, 10, 10, 10, 50, 4), k = 4), # unequal sizes
  list(x = c(50, 50, 50, 50, 50, 50, 50, 49), n = rep(50, 8), k = 4), # one seed missing: nothing to be had
  list(x = c(0, 1, 0, 25, 26, 24, 25, 25), n = rep(50, 8), k = 3)
)
proportions <- lapply(proportionCases, function(case) {
  difference <- function(i) sum(case$x[i]) / sum(case$n[i]) - sum(case$x[-i]) / sum(case$n[-i])
  all <- combn(length(case$x), case$k, difference)
  units <- Map(function(x, n) list(count = x, seeds = n), case$x, case$n)
  list(a = units[seq_len(case$k)], b = units[-seq_len(case$k)], arrangements = length(all), p = p_of(difference(seq_len(case$k)), all))
})

signFlip <- lapply(
  list(1:6, c(1, 2, 3, 4, 5, -6, 0), c(0, 0, 0, 0, 0, 0, 1), 1:5, c(0.1, 0.2, -0.3, 0.1, 0.2, -0.3, 0.4), rep(2, 10)),
  function(d) {
    all <- as.matrix(expand.grid(rep(list(c(1, -1)), length(d)))) %*% d
    list(differences = array_of(d), arrangements = length(all), p = p_of(sum(d), all))
  }
)

write_reference(file = "permutation.json", means = means, proportions = proportions, signFlip = signFlip)
