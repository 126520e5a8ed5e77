# Ordinary kriging by gstat: points.csv nodes.csv out.csv. Prints the seconds of kriging alone, five times.
suppressMessages({library(sp); library(gstat)})
file <- commandArgs(trailingOnly = TRUE)
points <- read.csv(file[1]); nodes <- read.csv(file[2])
coordinates(points) <- ~x + y; coordinates(nodes) <- ~x + y
model <- vgm(psill = 4, model = "Sph", range = 1500, nugget = 0.5)
for (run in 1:5) {
  began <- Sys.time()
  done <- krige(value ~ 1, points, nodes, model, nmax = 24, debug.level = 0)
  cat(as.numeric(Sys.time() - began, units = "secs"), "\n")
}
write.csv(data.frame(x = coordinates(done)[, 1], y = coordinates(done)[, 2], estimate = done$var1.pred,
                     variance = done$var1.var), file[3], row.names = FALSE)
