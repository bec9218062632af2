# Random numbers of R's own L'Ecuyer generator. Writes random.json.
source("json.R")
RNGkind("L'Ecuyer-CMRG")
random <- lapply(list(0, 1, 42, 2026, -5, .Machine$integer.max), function(seed) {
  set.seed(seed)
  list(seed = seed, values = array_of(runif(20)))
})
write_reference(file = "random.json", random = random)
