# Supernodal Cholesky of CHOLMOD, as R's Matrix has it: a grid of columns x rows nodes with ten unknowns each, every node coupled to
# its eight neighbours. Prints the seconds of factoring and one solve, five times.
suppressMessages(library(Matrix))
sides <- as.integer(commandArgs(trailingOnly = TRUE))
band <- function(n) bandSparse(n, k = -1:1, diagonals = list(rep(1, n), rep(1, n), rep(1, n)))
coupled <- kronecker(band(sides[2]), band(sides[1]))
a <- forceSymmetric(kronecker(coupled, Matrix(1, 10, 10, sparse = TRUE)) + Diagonal(10 * prod(sides), 200))
b <- rnorm(nrow(a))
for (run in 1:5) {
  copy <- a
  copy@factors <- list()
  began <- Sys.time()
  x <- solve(Cholesky(copy, perm = TRUE, LDL = FALSE, super = TRUE), b)
  cat(as.numeric(Sys.time() - began, units = "secs"), "\n")
}
