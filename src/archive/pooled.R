# Recomputes what several seed trials say together to one question, in base R only and apart from the program that made
# the page, and compares it with analysis.json.
#
#   Rscript analysis.R          in the folder that holds trials.csv and analysis.json
#
# It stops with an error where a figure differs by more than 1e-6 (relative to the figure where that is above 1);
# otherwise it prints how many agree. Each trial's own interval is taken from trials.csv, as its report gives it with a
# script of its own; that of a trial with one tray of a kind is worked out here from its counts.

tolerance <- 1e-6
agreed <- 0
differences <- character()

# ---- Reading -----------------------------------------------------------------------------------

# JSON as R lists: null becomes NA, arrays and objects become lists.
read_json <- function(file) {
  text <- paste(readLines(file, encoding = "UTF-8", warn = FALSE), collapse = "\n")
  pattern <- '"[^"\\\\]*+(?:\\\\.[^"\\\\]*+)*+"|-?[0-9][0-9.eE+-]*|true|false|null|[][{}:,]'
  tokens <- regmatches(text, gregexpr(pattern, text, perl = TRUE))[[1]]
  position <- 0
  following <- function() {
    position <<- position + 1
    tokens[position]
  }
  value <- function(token) {
    first <- substr(token, 1, 1)
    if (first == '"') return(gsub('\\\\(["\\\\/])', "\\1", substr(token, 2, nchar(token) - 1)))
    if (first == "{" || first == "[") return(members(first == "{"))
    if (first %in% c("t", "f")) return(token == "true")
    if (first == "n") return(NA)
    as.numeric(token)
  }
  members <- function(named) {
    found <- list()
    repeat {
      token <- following()
      if (token %in% c("}", "]")) return(found)
      if (token == ",") token <- following()
      if (named) {
        name <- value(token)
        following() # the colon
        found[name] <- list(value(following()))
      } else {
        found <- c(found, list(value(token)))
      }
    }
  }
  value(following())
}

# A number at a path in a list; NA where there is none.
at <- function(x, ...) {
  for (name in c(...)) {
    if (!is.list(x) || is.null(x[[name]])) return(NA_real_)
    x <- x[[name]]
  }
  if (is.list(x)) NA_real_ else as.numeric(x)
}

# Each figure worked out here beside the published one; NA stands for null.
agree <- function(what, mine, published) {
  for (name in names(mine)) {
    a <- unname(mine[[name]])
    b <- unname(published[[name]])
    if (is.na(a) && is.na(b)) next
    if (!is.na(a) && !is.na(b) && abs(a - b) <= tolerance * max(1, abs(b))) {
      agreed <<- agreed + 1
    } else {
      differences <<- c(differences, sprintf("%s, %s: published %.10g, recomputed %.10g", what, name, b, a))
    }
  }
}

# ---- One trial ---------------------------------------------------------------------------------

# Wilson (1927) score interval; n the effective number of seeds.
wilson <- function(p, n, q) {
  centre <- (p + q^2 / (2 * n)) / (1 + q^2 / n)
  spread <- q * sqrt(p * (1 - p) / n + q^2 / (4 * n^2)) / (1 + q^2 / n)
  c(if (p == 0) 0 else centre - spread, if (p == 1) 1 else centre + spread)
}

# Difference of two shares in points: Newcombe (1998) hybrid score, his method 10, cut at 100 points.
newcombe <- function(pt, nt, pc, nc, q) {
  t <- wilson(pt, nt, q)
  c <- wilson(pc, nc, q)
  limits <- c((pt - pc) - sqrt((pt - t[1])^2 + (c[2] - pc)^2), (pt - pc) + sqrt((t[2] - pt)^2 + (pc - c[1])^2))
  100 * pmax(-1, pmin(1, limits))
}

# The difference of one trial with its 95 % interval and its standard error: half the width of the interval / 1.959964,
# whatever quantile built it. With one tray of a kind the interval is that of half as many seeds (dispersion 2).
study <- function(row) {
  limits <- c(row$lower, row$upper)
  estimate <- row$estimate
  if (row$basis == "half-seeds") {
    pt <- row$treatment_count / row$treatment_seeds
    pc <- row$control_count / row$control_seeds
    limits <- newcombe(pt, row$treatment_seeds / 2, pc, row$control_seeds / 2, qnorm(0.975))
    estimate <- 100 * (pt - pc)
  }
  c(estimate = estimate, lower = limits[1], upper = limits[2], se = diff(limits) / 2 / qnorm(0.975))
}

# ---- All trials together -----------------------------------------------------------------------

# Restricted likelihood (logarithm, up to a constant) of the variance between trials.
likelihood <- function(tau2, y, v) {
  w <- 1 / (v + tau2)
  mu <- sum(w * y) / sum(w)
  0.5 * (sum(log(w)) - log(sum(w)) - sum(w * (y - mu)^2))
}

# Its highest point at 0 or above (REML): optimise on every stretch of a grid that may hold a hill, then once more, close by
# and on the likelihood less its height there, so that the flat top is placed to more digits.
reml <- function(y, v) {
  top <- max(v, diff(range(y))^2)
  if (diff(range(y)) == 0) return(0)
  grid <- c(0, top * 10^seq(-8, 0, length.out = 200))
  heights <- vapply(grid, likelihood, 0, y = y, v = v)
  best <- which.max(heights)
  if (best == 1 && likelihood(grid[2], y, v) < heights[1]) return(0)
  near <- grid[c(max(1, best - 1), min(length(grid), best + 1))]
  found <- optimise(likelihood, near, y = y, v = v, maximum = TRUE, tol = 1e-10 * top)$maximum
  slope <- function(tau2) {
    w <- 1 / (v + tau2)
    mu <- sum(w * y) / sum(w)
    sum((w * (y - mu))^2) + sum(w^2) / sum(w) - sum(w)
  }
  if (slope(0) <= 0 && heights[1] >= likelihood(found, y, v)) return(0)
  close <- pmax(0, found * c(0.999, 1.001))
  if (slope(close[1]) <= 0 || slope(close[2]) >= 0) return(found)
  uniroot(slope, close, tol = 1e-13 * top)$root
}

# Random effects; interval of Knapp and Hartung (2003) on K - 1, or the ordinary one where its standard error is larger
# and it is the wider; p the larger likewise. Q, and I2 after Higgins and Thompson (2002).
together <- function(y, se) {
  v <- se^2
  k <- length(y)
  tau2 <- reml(y, v)
  w <- 1 / (v + tau2)
  mu <- sum(w * y) / sum(w)
  ordinary <- sqrt(1 / sum(w))
  adjusted <- sqrt(sum(w * (y - mu)^2) / (k - 1) / sum(w))
  guarded <- adjusted < ordinary * (1 - 1e-9)
  half <- qt(0.975, k - 1) * adjusted
  p <- 2 * pt(-abs(mu / adjusted), k - 1)
  if (guarded) {
    half <- max(half, qnorm(0.975) * ordinary)
    p <- max(p, 2 * pnorm(-abs(mu / ordinary)))
  }
  reach <- function(extra) qt(0.975, k - 1) * sqrt(tau2 + max(ordinary, adjusted)^2 + extra)
  fixed <- 1 / v
  q <- sum(fixed * (y - sum(fixed * y) / sum(fixed))^2)
  typical <- (k - 1) * sum(fixed) / (sum(fixed)^2 - sum(fixed^2))
  list(
    figures = c(
      estimate = mu, lower = mu - half, upper = mu + half, p = p, guarded = as.numeric(guarded),
      predictionLower = mu - reach(0), predictionUpper = mu + reach(0),
      nextLower = mu - reach(median(v)), nextUpper = mu + reach(median(v)),
      tau2 = tau2, i2 = 100 * tau2 / (tau2 + typical), q = q, qDf = k - 1, qP = pchisq(q, k - 1, lower.tail = FALSE)
    ),
    weights = 100 * w / sum(w)
  )
}

# ---- All of it ---------------------------------------------------------------------------------

published <- read_json("analysis.json")
if (!identical(published$format, "fairsown-pooled/1")) stop("analysis.json is not of the format that this script knows")
trials <- read.csv("trials.csv", na.strings = "", check.names = FALSE, encoding = "UTF-8", stringsAsFactors = FALSE)
if (nrow(trials) != length(published$trials)) stop("trials.csv and analysis.json do not hold the same trials")

studies <- lapply(seq_len(nrow(trials)), function(i) study(trials[i, ]))
for (i in seq_along(studies)) {
  row <- published$trials[[i]]
  agree(sprintf("trial %d (%s)", i, row$trial), studies[[i]], vapply(row[names(studies[[i]])], as.numeric, 0))
}
y <- vapply(studies, function(s) s[["estimate"]], 0)
se <- vapply(studies, function(s) s[["se"]], 0)

if (length(y) < 3) {
  if (!is.na(at(published, "estimate"))) stop("fewer than three trials are not pooled, but analysis.json holds an estimate")
  cat("Fewer than three trials: nothing is pooled.\n")
} else {
  fit <- together(y, se)
  agree("together", fit$figures, c(
    estimate = at(published, "estimate"), lower = at(published, "interval", "lower"), upper = at(published, "interval", "upper"),
    p = at(published, "test", "p"), guarded = at(published, "guarded"),
    predictionLower = at(published, "prediction", "lower"), predictionUpper = at(published, "prediction", "upper"),
    nextLower = at(published, "nextResult", "lower"), nextUpper = at(published, "nextResult", "upper"),
    tau2 = at(published, "tau2"), i2 = at(published, "i2"), q = at(published, "q", "statistic"), qDf = at(published, "q", "df"),
    qP = at(published, "q", "p")
  ))
  for (i in seq_along(y)) {
    agree(sprintf("trial %d", i), c(weight = fit$weights[i]), c(weight = at(published$trials[[i]], "weight")))
  }
  for (i in seq_along(published$leaveOneOut)) {
    left <- together(y[-i], se[-i])$figures[c("estimate", "lower", "upper")]
    agree(sprintf("without trial %d", i), left, vapply(published$leaveOneOut[[i]][names(left)], as.numeric, 0))
  }
}

if (length(differences) > 0) {
  stop(sprintf("%d figures of %s differ from analysis.json:\n%s", length(differences), published$question, paste(differences, collapse = "\n")))
}
cat(sprintf("%s: all %d figures agree with analysis.json.\n", published$question, agreed))
