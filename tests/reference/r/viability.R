# The improved viability equation, v = Ki - p/sigma, log10 sigma = KE - CW log10 m - CH t - CQ t^2, as R arithmetic.
# Constants as published (tests/analysis/storage/expected-storage.test.ts names the sources). Writes viability.json.
source("json.R")

constants <- list(
  barley = c(9.983, 5.896, 0.040, 0.000428), onion = c(6.975, 3.470, 0.040, 0.000428), soybean = c(7.748, 3.979, 0.053, 0.000228),
  chickpea = c(9.070, 4.820, 0.045, 0.000324), cowpea = c(8.690, 4.715, 0.026, 0.000498), lettuce = c(8.218, 4.797, 0.0489, 0.000365),
  maize = c(9.993, 5.993), sorghum = c(9.381, 5.379), "pearl-millet" = c(9.336, 5.540), "sugar-beet" = c(8.988, 4.969),
  "african-rice" = c(8.786, 4.727), wheat = c(8.498, 4.836), "foxtail-millet" = c(8.478, 4.829), sugarcane = c(8.454, 4.964),
  "finger-millet" = c(8.288, 4.345), "kodo-millet" = c(8.138, 4.435), rice = c(8.096, 4.246), potato = c(8.037, 5.152)
)

days <- function(crop, moisture, temperature, from, to) {
  k <- c(constants[[crop]], 0.0322, 0.000454)[1:4]
  sigma <- 10^(k[1] - k[2] * log10(moisture) - k[3] * temperature - k[4] * temperature^2)
  list(sigma = sigma, days = sigma * (qnorm(from / 100) - qnorm(to / 100)))
}

cases <- rows(
  expand.grid(crop = names(constants), condition = 1:3, stringsAsFactors = FALSE),
  function(crop, condition) {
    moisture <- c(8, 10, 5.5)[condition]
    temperature <- c(5, 25, 40)[condition]
    from <- c(98, 90, 99.9)[condition]
    to <- c(85, 50, 1)[condition]
    c(list(moisture = moisture, temperature = temperature, from = from, to = to), days(crop, moisture, temperature, from, to))
  }
)

write_reference(file = "viability.json", cases = cases)
