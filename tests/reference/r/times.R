# Germination times and rates from counts of newly germinated seeds. Writes times.json.
source("json.R")

cases <- list(
  list(day = 1:10, newly = c(0, 0, 3, 11, 17, 9, 4, 2, 0, 1), sown = 50), # fixture A of sources.md 4
  list(day = 1:10, newly = c(0, 0, 0, 4, 9, 12, 8, 5, 3, 1), sown = 50), # B
  list(day = c(2, 4, 7, 10, 14), newly = c(5, 30, 40, 15, 2), sown = 100), # C
  list(day = c(3, 5, 8), newly = c(0, 0, 0), sown = 25), # nothing came up
  list(day = c(3, 5, 8), newly = c(0, 1, 0), sown = 25), # one seed
  list(day = c(3, 5, 8), newly = c(20, 2, 1), sown = 25), # half before the first check
  list(day = c(2.5, 4.5, 6, 9), newly = c(5, 0, 0, 5), sown = 10), # half exactly at the first check, then a plateau
  list(day = c(1, 2, 3, 4), newly = c(2, 3, 0, 5), sown = 10) # half exactly at a check
)
# Day on the line between the two checks around `share`; NA where the first check had it already.
reach <- function(day, newly, share) {
  total <- cumsum(newly)
  wanted <- share * sum(newly)
  at <- which(total >= wanted)[1]
  if (sum(newly) == 0 || at == 1) return(NA)
  approx(total[c(at - 1, at)], day[c(at - 1, at)], wanted)$y
}
bracket <- function(day, newly, share) {
  if (sum(newly) == 0) return(NA)
  below <- findInterval(share * sum(newly), cumsum(newly), left.open = TRUE)
  list(after = c(0, day)[below + 1], by = day[below + 1])
}
times <- lapply(cases, function(case) {
  day <- case$day
  newly <- case$newly
  n <- sum(newly)
  f <- newly[newly > 0] / n
  list(
    checks = unname(Map(function(d, x) list(day = d, newly = x), day, newly)), sown = case$sown,
    t10 = reach(day, newly, 0.1), t25 = reach(day, newly, 0.25), t50 = reach(day, newly, 0.5),
    t75 = reach(day, newly, 0.75), t90 = reach(day, newly, 0.9), bracket = bracket(day, newly, 0.5),
    mgt = if (n == 0) NA else weighted.mean(day, newly), cvg = if (n == 0) NA else 100 * n / sum(newly * day),
    maguire = sum(newly / day) / case$sown * 100, uncertainty = if (n == 0) NA else -sum(f * log2(f)),
    synchrony = if (n < 2) NA else sum(choose(newly, 2)) / choose(n, 2)
  )
})

write_reference(file = "times.json", times = times)
