# Writes references as JSON, one case a line, with the version of R that computed them. Base R only.
# A scalar is a number, text or boolean, NA is null; a list with names is an object, one without an array.

json <- function(x) {
  if (is.list(x)) {
    items <- vapply(x, json, "")
    if (is.null(names(x))) return(paste0("[", paste(items, collapse = ","), "]"))
    return(paste0("{", paste(sprintf('"%s":%s', names(x), items), collapse = ","), "}"))
  }
  if (length(x) != 1) return(json(unname(as.list(x))))
  if (is.na(x)) return("null")
  if (is.character(x)) return(sprintf('"%s"', x))
  if (is.logical(x)) return(if (x) "true" else "false")
  sprintf("%.17g", x)
}

# An array even where it holds one value.
array_of <- function(x) unname(as.list(x))

# The rows of a table of cases, each with the values that `compute` gives for it.
rows <- function(cases, compute) {
  lapply(seq_len(nrow(cases)), function(i) {
    case <- as.list(cases[i, , drop = FALSE])
    c(case, do.call(compute, case))
  })
}

# `...`: arrays of cases by name. Written to `file` (spelt out) in the working directory.
write_reference <- function(..., file) {
  tables <- list(...)
  texts <- vapply(names(tables), function(name) {
    sprintf('"%s":[\n%s\n]', name, paste(vapply(tables[[name]], json, ""), collapse = ",\n"))
  }, "")
  writeLines(sprintf('{"source":"%s",\n%s}', R.version.string, paste(texts, collapse = ",\n")), file)
}
